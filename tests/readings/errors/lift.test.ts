import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/core/fact/fact-list';
import type { AnswerFlag } from '../../../src/readings/errors/answer-flags';
import { chanceOf, liftsOf, type Taking } from '../../../src/readings/errors/lift';
import type { WrongAnswer } from '../../../src/readings/errors/read-error';

const tables = factsOf('mul').filter(({ a, b }) => a >= 2 && b >= 2);
const [sevenEights] = tables.filter(({ id }) => id === 'mul-7-8');
if (!sevenEights) throw new Error('7 × 8 is a fact');

const liftOf = (flag: AnswerFlag, answers: readonly ReturnType<typeof answer>[]) => {
  const [lift] = liftsOf([flag], answers);
  if (!lift) throw new Error('one flag, one lift');
  return lift;
};

const answer = (given: string | null, taking: Taking = 'done'): WrongAnswer & { taking: Taking } => ({
  fact: sevenEights,
  given,
  firstKeyMs: 900,
  before: null,
  pad: 'phone',
  reach: 9,
  taking,
});

describe('chance', () => {
  it('7 × 8: 14 of 99 numbers, 14 of 30 products, 14 of 89 numbers as long', () => {
    expect(chanceOf('operand', answer(null), 'done')).toBe(14 / 99);
    expect(chanceOf('operand', answer(null), 'done', 'products')).toBe(14 / 30);
    expect(chanceOf('operand', answer(null), 'itself')).toBe(14 / 89);
  });

  it('a long answer may be keyed up to 199', () => {
    const twelves = factsOf('mul', 12).find(({ id }) => id === 'mul-12-12');
    if (!twelves) throw new Error('12 × 12 is a fact');
    expect(chanceOf('offByOne', { ...answer(null), fact: twelves, reach: 12 }, 'done')).toBe(2 / 199);
    expect(chanceOf('offByOne', { ...answer(null), fact: twelves, reach: 12 }, 'itself')).toBe(2 / 99);
  });

  it('table and non-table share all numbers between them', () => {
    fc.assert(
      fc.property(fc.constantFrom(...tables), fc.constantFrom<Taking>('itself', 'done'), (fact, taking) => {
        const at = { ...answer(null), fact };
        expect(chanceOf('table', at, taking) + chanceOf('nonTable', at, taking)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('lift over chance', () => {
  it('blind numbers have a lift of one', () => {
    for (const taking of ['itself', 'done'] as const) {
      const from = taking === 'done' ? 0 : 10;
      const blind = Array.from({ length: 100 - from }, (_, index) => index + from).filter((n) => n !== 56);
      const lift = liftOf(
        'operand',
        blind.map((number) => answer(String(number), taking)),
      );
      expect(lift.hits).toBe(14);
      expect(lift.lift).toBeCloseTo(1, 12);
    }
  });

  it('operand errors only have a high lift that chance does not explain', () => {
    const lift = liftOf(
      'operand',
      ['48', '63', '49', '64'].map((given) => answer(given)),
    );
    expect(lift.hits).toBe(4);
    expect(lift.lift).toBeCloseTo(99 / 14, 12);
    expect(lift.pMore).toBeCloseTo((14 / 99) ** 4, 12);
  });

  it('leaves omissions out, and has no lift without answers', () => {
    expect(liftOf('operand', [answer(null), answer('')])).toEqual({
      flag: 'operand',
      hits: 0,
      of: 0,
      expected: 0,
      lift: null,
      pMore: 1,
    });
  });

  it('the answer before is one number among those that could have been given', () => {
    const again = { ...answer('48'), before: 48 };
    expect(liftOf('perseveration', [again])).toMatchObject({ hits: 1, expected: 1 / 99 });
    // The right answer given before can't be given wrongly again.
    expect(liftOf('perseveration', [{ ...answer('48'), before: 56 }])).toMatchObject({ hits: 0, lift: null });
  });
});
