import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { Length, Piece } from '../../src/ui/piece';
import { Stitch, type StitchState } from '../../src/ui/stitch';
import { edgeCount, WovenEdge } from '../../src/ui/woven-edge';
import '../../src/ui/cloth.css';
import '../../src/ui/tokens.css';

afterEach(cleanup);

const states: readonly StitchState[] = ['stitch', 'loose', 'hole', 'mended', 'plain'];
const ops = ['add', 'sub', 'mul', 'div'] as const;

function shapes(drawing: preact.VNode): string {
  const { container, unmount } = render(drawing);
  const found = [...container.querySelectorAll('path')].map((path) => path.getAttribute('d')).join('|');
  unmount();
  return found;
}

describe('a stitch', () => {
  it('tells its state by shape, whatever its colour', () => {
    for (const op of ops) {
      expect(new Set(states.map((state) => shapes(<Stitch op={op} state={state} seed={3} />))).size).toBe(
        states.length,
      );
    }
  });

  it('tells its operation by shape', () => {
    expect(new Set(ops.map((op) => shapes(<Stitch op={op} state="stitch" seed={3} />))).size).toBe(
      ops.length,
    );
  });

  it('is drawn the same for ever from the same seed, and by hand from another', () => {
    const draw = (seed: number) => shapes(<Stitch op="mul" state="stitch" seed={seed} />);
    expect(draw(3)).toBe(draw(3));
    expect(draw(3)).not.toBe(draw(4));
  });
});

describe('a piece', () => {
  const piece = (count: number) => ({
    seed: 1,
    places: Array.from({ length: count }, () => ({ op: 'add', state: 'stitch' }) as const),
  });

  it('has every place, five to a row, inside its hem', () => {
    const { container } = render(<Piece piece={piece(30)} label="Your piece" />);
    const at = [...container.querySelectorAll('.place')].map((place) => place.getAttribute('transform'));
    expect(new Set(at).size).toBe(30);
    expect(new Set(at.map((one) => one?.split(' ')[0])).size).toBe(5);
  });

  it('lets each stitch come in at its own place', () => {
    const { container } = render(<Piece piece={piece(25)} label="Your piece" appearing />);
    const last = container.querySelector('.place:last-child') ?? container;
    const [appearing] = last.getAnimations();
    expect(appearing?.effect?.getTiming()).toMatchObject({ iterations: 1 });
    const lefts = [0, 100, 200].map((atMs) => {
      if (appearing) appearing.currentTime = Number(appearing.effect?.getTiming().delay) + atMs;
      return Math.round(last.getBoundingClientRect().left);
    });
    expect(new Set(lefts).size).toBe(1);
  });

  it('has the same hem whether rows were added or not', () => {
    const dashes = (count: number) => {
      const { container, unmount } = render(<Piece piece={piece(count)} label="Your piece" />);
      const found = [...container.querySelectorAll('.hem, .fold')].map((one) => one.getAttribute('class'));
      unmount();
      return found;
    };
    expect(dashes(35)).toEqual(dashes(25));
  });
});

describe('a length of the long cloth', () => {
  const piece = {
    seed: 4,
    places: Array.from(
      { length: 10 },
      (_, index) => ({ op: 'mul', state: index < 7 ? 'stitch' : 'plain' }) as const,
    ),
  };

  it('is the piece as it was worked: the same stitches in the same rows', () => {
    const places = (drawing: preact.VNode) => {
      const { container, unmount } = render(drawing);
      const found = [...container.querySelectorAll('.place')].map((place) => ({
        at: (place.getAttribute('transform')?.match(/[\d.]+/g) ?? []).map(Number),
        drawn: place.innerHTML,
      }));
      unmount();
      return found;
    };
    const alone = places(<Piece piece={piece} label="Your piece" />);
    const inCloth = places(<Length piece={piece} />);
    const [first] = alone;
    expect(inCloth.map(({ drawn }) => drawn)).toEqual(alone.map(({ drawn }) => drawn));
    expect(inCloth.map(({ at }) => at)).toEqual(
      alone.map(({ at }) => at.map((where, axis) => where - (first?.at[axis] ?? 0))),
    );
  });
});

describe('a woven edge', () => {
  const edgeOf = (edge: number) => {
    const { container, unmount } = render(<WovenEdge edge={edge} />);
    const found = [...container.querySelectorAll('.floats')].map(
      (one) => `${one.parentElement?.getAttribute('class')} ${one.getAttribute('d')}`,
    );
    unmount();
    return found.join();
  };

  it('is another for each number until all have been', () => {
    expect(new Set(Array.from({ length: edgeCount }, (_, edge) => edgeOf(edge))).size).toBe(edgeCount);
  });

  it('differs in shape, not only in colour, between six children numbered in a row', () => {
    const drawn = Array.from({ length: 6 }, (_, edge) => shapes(<WovenEdge edge={edge} />));
    expect(new Set(drawn).size).toBe(6);
  });
});
