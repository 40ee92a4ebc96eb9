import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isLookBackDue, isSpokenCheckWaiting } from '../../../src/core/look-back/look-back-due';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import { finishedDaysKept, stepSummary } from '../../../src/core/summary/step-summary';
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
  const always = () => true;
  const sheets = (many: number) => term(many, always, always).summary;
  const isWaiting = (many: number, lastSpoken: string | null, every = 10) =>
    isSpokenCheckWaiting(sheets(many), lastSpoken, every);

  // Every tenth sheet: common practice, no source.
  test('wait from the tenth sheet, a look-back as well, until one is held', () => {
    expect(isWaiting(9, null)).toBe(false);
    expect(isWaiting(10, null)).toBe(true);
    expect(sheets(10).lookBacks.finished).toBe(2);
    expect(isWaiting(10, dayOf(9))).toBe(false);
    expect(isWaiting(19, dayOf(9))).toBe(false);
    expect(isWaiting(20, dayOf(9))).toBe(true);
  });

  test('do not heap up: after sixty sheets one waits, and held once none does', () => {
    expect(isWaiting(60, null)).toBe(true);
    expect(isWaiting(60, dayOf(59))).toBe(false);
  });

  test('come as often as the parent wants, or never', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: finishedDaysKept }),
        fc.nat(70),
        fc.nat(70),
        (every, many, held) => {
          const since = Math.max(0, many - held);
          expect(isWaiting(many, held === 0 ? null : dayOf(held - 1), every)).toBe(since >= every);
          expect(isWaiting(many, null, 0)).toBe(false);
        },
      ),
    );
  });

  test('count no sheet that was broken off', () => {
    const { summary } = term(12, (day) => day % 4 !== 0, always);
    expect(summary.finishedDays).toHaveLength(9);
    expect(isSpokenCheckWaiting(summary, null, 10)).toBe(false);
  });
});
