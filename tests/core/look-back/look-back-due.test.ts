import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isLookBackDue, isSpokenCheckWaiting, isSpokenWith } from '../../../src/core/look-back/look-back-due';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import { stepSummary } from '../../../src/core/summary/step-summary';
import { emptySummary, type Summary } from '../../../src/core/summary/summary';
import { satOf } from '../household/made-records';

const dayOf = (index: number) => new Date(Date.UTC(2026, 0, 5 + index)).toISOString().slice(0, 10);

/** A sheet on each day, look-backs as they fall due where `canLookBack`; gives the kinds in their order. */
function term(days: number, finishes: (day: number) => boolean, canLookBack: (day: number) => boolean) {
  let summary: Summary = emptySummary;
  const kinds: ('sheet' | 'lookBack' | 'torn')[] = [];
  for (let day = 0; day < days; day += 1) {
    const lookBack = isLookBackDue(summary.lookBacks) && canLookBack(day);
    const ended = finishes(day) ? 'finished' : 'torn';
    const sat = satOf('ann', dayOf(day), day + 1, [], { ended, ...(lookBack && { lookBack }) });
    summary = stepSummary(summary, { sat, child: 'ann', rulings: noRulings }, []);
    kinds.push(ended === 'torn' ? 'torn' : lookBack ? 'lookBack' : 'sheet');
  }
  return { kinds, summary };
}

describe('look-backs', () => {
  // Every fifth sheet: common practice, no source.
  test('take the place of every fifth sheet', () => {
    const { kinds } = term(
      20,
      () => true,
      () => true,
    );
    expect(kinds.map((kind) => (kind === 'lookBack' ? 'L' : '.')).join('')).toBe('....L....L....L....L');
  });

  test('come again on the next day where one was broken off', () => {
    const { kinds } = term(
      7,
      (day) => day !== 4,
      () => true,
    );
    expect(kinds).toEqual(['sheet', 'sheet', 'sheet', 'sheet', 'torn', 'lookBack', 'sheet']);
  });

  test('wait while there is nothing to look back on, and then come once', () => {
    const { kinds } = term(
      14,
      () => true,
      (day) => day >= 9,
    );
    expect(kinds.flatMap((kind, day) => (kind === 'lookBack' ? [day] : []))).toEqual([9]);
  });

  test('never follow each other, whatever was broken off', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 30, maxLength: 60 }), (finished) => {
        const { kinds } = term(
          finished.length,
          (day) => finished[day] === true,
          () => true,
        );
        const done = kinds.filter((kind) => kind !== 'torn');
        done.forEach((kind, index) => {
          expect(kind).toBe(index % 5 === 4 ? 'lookBack' : 'sheet');
        });
      }),
    );
  });
});

describe('spoken checks', () => {
  // Every tenth sheet: common practice, no source.
  test('come with every second look-back', () => {
    expect([1, 2, 3, 4, 5, 6].filter(isSpokenWith)).toEqual([2, 4, 6]);
    expect(isSpokenWith(0)).toBe(false);
  });

  test('wait from the tenth sheet until one is held', () => {
    const { lookBacks } = term(
      10,
      () => true,
      () => true,
    ).summary;
    expect(lookBacks.spokenFrom).toBe(dayOf(9));
    expect(isSpokenCheckWaiting(lookBacks, null)).toBe(true);
    expect(isSpokenCheckWaiting(lookBacks, dayOf(0))).toBe(true);
    expect(isSpokenCheckWaiting(lookBacks, dayOf(9))).toBe(false);
    expect(
      isSpokenCheckWaiting(
        term(
          9,
          () => true,
          () => true,
        ).summary.lookBacks,
        null,
      ),
    ).toBe(false);
  });

  test('do not heap up: after thirty sheets one waits, and held once none does', () => {
    const { lookBacks } = term(
      30,
      () => true,
      () => true,
    ).summary;
    expect(isSpokenCheckWaiting(lookBacks, null)).toBe(true);
    expect(isSpokenCheckWaiting(lookBacks, dayOf(29))).toBe(false);
  });
});
