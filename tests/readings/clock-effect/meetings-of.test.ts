import { describe, expect, it } from 'vitest';
import type { PromptId } from '../../../src/core/fact/prompt';
import { markSat } from '../../../src/core/marking/mark-sat';
import { noRulings, type SatRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat, SittingPlan } from '../../../src/core/record/sat';
import { meetingsOf } from '../../../src/readings/clock-effect/meetings-of';
import { copyPlan, type Hands, sit } from '../robot';

const hands: Hands = { firstMs: 900, gapMs: 200, doneMs: 300, turnMs: 16 };
const prompts: readonly PromptId[] = ['mul-7-8', 'mul-2-3', 'mul-6-6', 'mul-9-1', 'mul-4-4'];
const sheet = (more: Partial<SittingPlan> = {}): SittingPlan =>
  copyPlan([], { purpose: 'sheet', prompts, ...more });
const limits = { firm: 20, even: 15, loose: 10 };
const read = (sat: Sat, rulings: Partial<SatRulings> = {}) =>
  meetingsOf(sat, markSat(sat, { ...noRulings, ...rulings }, limits));

describe('facts met', () => {
  it('on an untimed sheet are all of them, right or wrong, with the time to the first key', () => {
    const met = read(sit(sheet(), () => hands, { day: '2026-02-03', given: new Map([[1, '5']]) }));
    expect(met.map(({ fact }) => fact)).toEqual(prompts);
    expect(met.map(({ right }) => right)).toEqual([true, false, true, true, true]);
    expect(met[0]).toEqual({
      fact: 'mul-7-8',
      day: '2026-02-03',
      withClock: false,
      where: 'tablet touch element',
      right: true,
      firstKeyMs: 900,
    });
  });

  it('by the clock are those reached; the card at the bell keeps its time and has no say on right and wrong', () => {
    // Cards end 1100, 2016, 3132, … ms after the first onset: the third is on screen at 2.5 s.
    const met = read(sit(sheet({ clock: { allowanceMs: 2500, sight: 'thread' } }), () => hands));
    expect(met.map(({ fact, right, withClock, firstKeyMs }) => [fact, right, withClock, firstKeyMs])).toEqual(
      [
        ['mul-7-8', true, true, 900],
        ['mul-2-3', true, true, 900],
        ['mul-6-6', null, true, 900],
      ],
    );
  });

  it('none are met on rows, mending, practice, a second sheet or copied numbers', () => {
    for (const purpose of ['row', 'mending', 'practice'] as const) {
      expect(read(sit(sheet({ purpose }), () => hands))).toEqual([]);
    }
    expect(read(sit(sheet({ second: true }), () => hands))).toEqual([]);
    expect(read(sit(copyPlan([3, 4], { purpose: 'sheet' }), () => hands))).toEqual([]);
  });

  it('none are met where the sitting is voided or not the child’s own work', () => {
    const sat = sit(sheet(), () => hands);
    expect(read(sat, { voided: true })).toEqual([]);
    expect(read(sat, { notOwnWork: true })).toEqual([]);
  });

  it('an interrupted clock counts for nothing unless the parent lets it stand; an interrupted untimed sheet counts', () => {
    const away = [{ why: 'hidden', fromMs: 1, toMs: 2, afterVisits: 0 }] as const;
    const timed = { ...sit(sheet({ clock: { allowanceMs: 45_000, sight: 'thread' } }), () => hands), away };
    expect(read(timed)).toEqual([]);
    expect(read(timed, { bandAnyway: true })).toHaveLength(5);
    expect(read({ ...sit(sheet(), () => hands), away })).toHaveLength(5);
  });

  it('a fact shown on the card says nothing', () => {
    const sat = sit(sheet(), () => hands);
    const [first] = sat.visits;
    if (!first) throw new Error('five cards were sat');
    expect(read({ ...sat, visits: sat.visits.with(0, { ...first, shown: true }) })).toHaveLength(4);
  });
});
