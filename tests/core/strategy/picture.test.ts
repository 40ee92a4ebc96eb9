import { describe, expect, test } from 'vitest';
import type { Fact, Operation } from '../../../src/core/fact/fact';
import { factsOf, pairOf } from '../../../src/core/fact/fact-list';
import { writtenFact } from '../../../src/core/fact/written';
import { type Look, type Part, type Picture, pictureOf } from '../../../src/core/strategy/picture';
import type { Strategy } from '../../../src/core/strategy/strategy';
import { strategiesFor } from '../../../src/core/strategy/strategy-for';
import { known } from '../known';

interface Seen {
  readonly fact: Fact;
  readonly way: Strategy;
  readonly picture: Picture | null;
}

const seenOf = (op: Operation): readonly Seen[] =>
  factsOf(op, 12).flatMap((fact) =>
    strategiesFor(fact).map((way) => ({ fact, way, picture: pictureOf(way, fact) })),
  );
const named = ({ fact, way }: Seen) => `${writtenFact(fact)}: ${way.kind}`;

/** The dots of a picture, counted one by one. */
function dotsOf(picture: Picture | null): readonly Look[] {
  const spread = (parts: readonly Part[]) =>
    parts.flatMap(({ count, look }) => Array.from({ length: count }, () => look));
  switch (picture?.what) {
    case undefined:
      return [];
    case 'frames':
      return spread(picture.parts);
    case 'rows':
      return picture.rows.flatMap(spread);
    case 'array':
      return spread(picture.rows).flatMap((row) =>
        spread(picture.columns).map((column) =>
          row === 'gone' || column === 'gone' ? 'gone' : row === 'one' ? column : row,
        ),
      );
  }
}

const count = (picture: Picture | null, ...looks: readonly Look[]) =>
  dotsOf(picture).filter((look) => looks.includes(look)).length;
const buildsUp: readonly Strategy['kind'][] = ['countUp', 'thinkPlus', 'upToTen', 'upThroughTen'];

describe('the dots that stand', () => {
  test('of + are the sum', () => {
    const wrong = seenOf('add').filter(({ fact, picture }) => count(picture, 'one', 'other') !== fact.answer);
    expect(wrong.map(named)).toEqual([]);
  });

  test('of − are what is left, and those gone what was taken; with one given back, one less', () => {
    const wrong = seenOf('sub')
      .filter(({ way }) => !buildsUp.includes(way.kind))
      .filter(({ fact, picture }) => {
        const left = count(picture, 'one', 'other');
        return left !== fact.answer || left + count(picture, 'gone') !== fact.a;
      });
    expect(wrong.map(named)).toEqual([]);
  });

  test('of − built up are the whole, and the other ones what was added', () => {
    const wrong = seenOf('sub')
      .filter(({ way }) => buildsUp.includes(way.kind))
      .filter(({ fact, picture }) => {
        return count(picture, 'other') !== fact.answer || count(picture, 'one') !== fact.b;
      });
    expect(wrong.map(named)).toEqual([]);
  });

  test('of × are the product', () => {
    const wrong = seenOf('mul').filter(({ fact, picture }) => count(picture, 'one', 'other') !== fact.answer);
    expect(wrong.map(named)).toEqual([]);
  });

  test('of ÷ are what is shared out, in as many rows as share, each the answer long', () => {
    const wrong = seenOf('div').filter(({ fact, picture }) => {
      if (count(picture, 'one', 'other') !== fact.a) return true;
      if (picture === null) return false;
      if (picture.what !== 'array') return true;
      const total = (parts: readonly Part[]) =>
        parts.reduce((sum, part) => sum + (part.look === 'gone' ? 0 : part.count), 0);
      return total(picture.columns) !== fact.answer || total(picture.rows) !== fact.b;
    });
    expect(wrong.map(named)).toEqual([]);
  });
});

test('a picture is there wherever there is a dot to draw', () => {
  for (const op of ['add', 'sub', 'mul', 'div'] as const) {
    const wrong = seenOf(op).filter(({ fact, picture }) => {
      const [x, y] = pairOf(fact);
      const isEmpty = op === 'add' || op === 'sub' ? x + y === 0 : x * y === 0;
      return (picture === null) !== isEmpty;
    });
    expect(wrong.map(named)).toEqual([]);
  }
});

test('no part of a picture is empty, and no array is larger than 12 by 12', () => {
  for (const op of ['add', 'sub', 'mul', 'div'] as const) {
    for (const { picture } of seenOf(op)) {
      if (!picture) continue;
      const lists =
        picture.what === 'frames'
          ? [picture.parts]
          : picture.what === 'rows'
            ? picture.rows
            : [picture.rows, picture.columns];
      for (const part of lists.flat()) expect(part.count).toBeGreaterThan(0);
      expect(dotsOf(picture).length).toBeLessThanOrEqual(picture.what === 'array' ? 144 : 20);
    }
  }
});

describe('the picture of', () => {
  const pictureFor = (id: string, kind: Strategy['kind']) => {
    const way = strategiesFor(known(id)).find((one) => one.kind === kind);
    return way && pictureOf(way, known(id));
  };

  test('9 + 6 is a frame of ten short of one, and six', () => {
    expect(pictureFor('add-9-6', 'tenLessOne')).toEqual({
      what: 'frames',
      parts: [
        { count: 9, look: 'one' },
        { count: 1, look: 'gone' },
        { count: 6, look: 'other' },
      ],
    });
  });

  test('7 × 8 is five rows and two rows of eight', () => {
    expect(pictureFor('mul-7-8', 'splitLots')).toMatchObject({
      what: 'array',
      columns: [{ count: expect.any(Number), look: 'one' }],
    });
    expect(pictureFor('mul-9-4', 'lotsLess')).toEqual({
      what: 'array',
      rows: [
        { count: 9, look: 'one' },
        { count: 1, look: 'gone' },
      ],
      columns: [{ count: 4, look: 'one' }],
    });
  });

  test('none is none', () => {
    expect(pictureOf({ kind: 'none' }, known('add-2-2'))).toBeNull();
  });
});
