import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleLimit } from '../../../src/core/marking/band';
import { markSat } from '../../../src/core/marking/mark-sat';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { HandTime } from '../../../src/readings/hand-time/hand-time';
import { keypadFairness, type SheetToKey } from '../../../src/readings/hand-time/keypad-fairness';
import { copyPlan, type Hands, sit } from '../robot';

const limits = { firm: 20, even: 15, loose: 10 };

const handOf = ({ firstMs, gapMs, doneMs, turnMs }: Hands): HandTime => ({
  device: 'tablet',
  via: 'touch',
  copies: 20,
  byDigits: new Map([
    [1, 10],
    [2, 10],
  ]),
  isEnough: true,
  firstKeyMs: firstMs,
  gapMs,
  pauseMs: gapMs,
  doneMs,
  turnMs,
});

const hands = fc.record({
  firstMs: fc.integer({ min: 250, max: 3000 }),
  gapMs: fc.integer({ min: 40, max: 900 }),
  doneMs: fc.integer({ min: 60, max: 900 }),
  turnMs: fc.integer({ min: 1, max: 40 }),
});
const numbers = fc
  .constantFrom(5, 10, 15, 25)
  .chain((length) => fc.array(fc.integer({ min: 0, max: 144 }), { minLength: length, maxLength: length }));

/** Lets a robot with these hands sit the sheet through the sitting machine and counts what is right by the bell. */
function rightByBell(
  sheet: readonly number[],
  robot: Hands,
  takesItself: boolean,
  allowanceMs: number,
): number {
  const plan = copyPlan(sheet, { purpose: 'sheet', takesItself, clock: { allowanceMs, sight: 'hidden' } });
  return markSat(
    sit(plan, () => robot),
    noRulings,
    limits,
  ).rightByBell;
}

describe('what these hands could enter by the bell', () => {
  it('is what a robot with such hands gets right through the sitting machine', () => {
    fc.assert(
      fc.property(
        hands,
        numbers,
        fc.boolean(),
        fc.integer({ min: 1, max: 90 }),
        (robot, sheet, takesItself, allowanceS) => {
          const asked: SheetToKey = {
            hand: handOf(robot),
            digits: sheet.map((number) => String(number).length),
            takesItself,
            limits,
            thinkMs: 0,
          };
          const fairness = keypadFairness(asked, allowanceS * 1000);
          expect(fairness?.mostAnswers).toBe(rightByBell(sheet, robot, takesItself, allowanceS * 1000));
        },
      ),
      { numRuns: 150 },
    );
  });

  it('names the allowance, to the second, from which that robot reaches every band', () => {
    fc.assert(
      fc.property(hands, numbers, fc.boolean(), (robot, sheet, takesItself) => {
        const digits = sheet.map((number) => String(number).length);
        const fairness = keypadFairness(
          { hand: handOf(robot), digits, takesItself, limits, thinkMs: 0 },
          1000,
        );
        const restoringS = fairness?.restoringS;
        if (restoringS === null || restoringS === undefined)
          throw new Error('one second is too short for a sheet');
        const firm = scaleLimit(limits.firm, sheet.length);
        expect(rightByBell(sheet, robot, takesItself, restoringS * 1000)).toBeGreaterThanOrEqual(firm);
        expect(rightByBell(sheet, robot, takesItself, (restoringS - 1) * 1000)).toBeLessThan(firm);
      }),
      { numRuns: 100 },
    );
  });
});

describe('bands out of reach', () => {
  const digits = new Array<number>(25).fill(2);
  const slow = handOf({ firstMs: 2500, gapMs: 400, doneMs: 500, turnMs: 100 });
  const sheet: SheetToKey = { hand: slow, digits, takesItself: true, limits, thinkMs: 0 };

  it('are named from the top, by hand: 3 s an answer are 15 in 45 s', () => {
    expect(keypadFairness(sheet, 45_000)).toEqual({ mostAnswers: 15, outOfReach: ['firm'], restoringS: 60 });
    expect(keypadFairness(sheet, 44_000)).toEqual({
      mostAnswers: 14,
      outOfReach: ['firm', 'even'],
      restoringS: 60,
    });
  });

  it('count an answer whose last key falls at the bell itself', () => {
    // The fifteenth answer ends 2.9 s + 14 × 3 s after the first onset.
    expect(keypadFairness(sheet, 44_900)?.mostAnswers).toBe(15);
    expect(keypadFairness(sheet, 44_899)?.mostAnswers).toBe(14);
  });

  it('are none for quick hands, and then nothing is to be restored', () => {
    const quick = handOf({ firstMs: 600, gapMs: 200, doneMs: 300, turnMs: 17 });
    expect(keypadFairness({ ...sheet, hand: quick }, 45_000)).toEqual({
      mostAnswers: 25,
      outOfReach: [],
      restoringS: null,
    });
  });

  it('leave room to think where it is asked for', () => {
    const room = keypadFairness({ ...sheet, thinkMs: 1000 }, 45_000);
    expect(room?.mostAnswers).toBe(11);
    expect(room?.restoringS).toBe(80);
  });

  it('are not judged where the hands were never seen to do what the sheet asks', () => {
    expect(keypadFairness({ ...sheet, hand: { ...slow, gapMs: null } }, 45_000)).toBeNull();
    expect(
      keypadFairness({ ...sheet, hand: { ...slow, doneMs: null }, takesItself: false }, 45_000),
    ).toBeNull();
    const ones = {
      ...sheet,
      digits: [1, 1, 1, 1, 1],
      hand: { ...slow, gapMs: null, doneMs: null, turnMs: null },
    };
    expect(keypadFairness(ones, 45_000)).toMatchObject({ mostAnswers: 5, outOfReach: [] });
  });
});
