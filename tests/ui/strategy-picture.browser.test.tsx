import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import { factsOf, operations } from '../../src/core/fact/fact-list';
import type { Picture } from '../../src/core/strategy/picture';
import { pictureOf } from '../../src/core/strategy/picture';
import { strategiesFor } from '../../src/core/strategy/strategy-for';
import { StrategyPicture } from '../../src/ui/strategy-picture';
import '../../src/ui/tokens.css';

afterEach(cleanup);

/** How many dots a picture has, counted from its own parts. */
function counted(picture: Picture): number {
  const sum = (parts: readonly { readonly count: number }[]) =>
    parts.reduce((all, { count }) => all + count, 0);
  if (picture.what === 'frames') return sum(picture.parts);
  if (picture.what === 'rows') return picture.rows.reduce((all, row) => all + sum(row), 0);
  return sum(picture.rows) * sum(picture.columns);
}

const drawn = () => [...document.querySelectorAll('.strategy-picture path:not(.cells)')];
const dots = () => drawn().reduce((all, path) => all + (path.getAttribute('d')?.match(/M/g)?.length ?? 0), 0);

it('draws every dot of every fact’s strategies, inside its frame', () => {
  for (const fact of operations.flatMap((op) => factsOf(op, 12))) {
    for (const strategy of strategiesFor(fact)) {
      const picture = pictureOf(strategy, fact);
      if (!picture) continue;
      render(<StrategyPicture picture={picture} />);
      expect(dots(), `${fact.id} by ${strategy.kind}`).toBe(counted(picture));
      const { width, height } = document.querySelector('svg')?.viewBox.baseVal ?? { width: 0, height: 0 };
      for (const path of drawn()) {
        const box = (path as SVGPathElement).getBBox();
        expect(box.x + box.width, fact.id).toBeLessThanOrEqual(width);
        expect(box.y + box.height, fact.id).toBeLessThanOrEqual(height);
      }
      cleanup();
    }
  }
});

it('tells dots of another kind, and those taken away, by their shape', () => {
  const parts = (['one', 'other', 'gone'] as const).map((look) => ({ count: 2, look }));
  render(<StrategyPicture picture={{ what: 'frames', parts }} />);
  const shapes = drawn().map((path) => path.getAttribute('d')?.replace(/[\d.-]+/g, '#'));
  expect(new Set(shapes).size).toBe(3);
  expect(document.querySelectorAll('.cells')).toHaveLength(1);
});

it('fills a second frame once ten are in the first', () => {
  render(<StrategyPicture picture={{ what: 'frames', parts: [{ count: 13, look: 'one' }] }} />);
  const middles = [...(drawn()[0]?.getAttribute('d') ?? '').matchAll(/M([\d.]+) ([\d.]+)/g)].map(([, , y]) =>
    Number(y),
  );
  expect(middles.filter((y) => y > 40)).toHaveLength(3);
});
