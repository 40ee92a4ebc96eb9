import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factsOf } from '../../src/core/fact/fact-list';
import { markSat } from '../../src/core/marking/mark-sat';
import { noRulings } from '../../src/core/marking/sat-rulings';
import type { SittingPlan } from '../../src/core/record/sat';
import { defaultChildSettings } from '../../src/core/record/settings';
import type { SittingState } from '../../src/core/sitting/machine';
import { makeChance } from '../../src/demo/chance';
import { makeMind, type Traits } from '../../src/demo/made-child';
import { type Mishap, sit } from '../../src/demo/sit';
import { known } from '../core/known';
import { clock45, planOf, stamped, timed } from '../core/sitting/sitter';

/** A child without a fault: remembers everything, never slips, hurries or tires. */
const faultless: Traits = {
  ageYears: 9,
  hand: { firstKeyMs: 500, nextKeyMs: 220, doneMs: 260, spread: 0.1 },
  via: 'touch',
  before: () => 1000,
  learning: 1,
  right: { memory: 1, step: 1 },
  rushing: { untimed: 0, timed: 0 },
  checking: 0,
  skipping: 0,
  slipping: 0,
  noticing: 0,
  clock: { logThink: 0, accuracy: 0 },
  tiring: 0,
};
const prompts = factsOf('mul')
  .filter(({ a, b }) => a >= 2 && b >= 2)
  .map(({ id }) => id)
  .slice(0, 25);
const untimed = planOf(prompts);

function sat(plan: SittingPlan, changes: Partial<Traits> = {}, seed = 1, mishap: Mishap | null = null) {
  return sit(plan, makeMind({ ...faultless, ...changes }), makeChance(seed), mishap);
}

function mark(state: SittingState) {
  return markSat(stamped(state), noRulings, defaultChildSettings.limits);
}

const meanThink = (state: SittingState) => {
  const times = mark(state).places.flatMap(({ firstKeyMs }) => firstKeyMs ?? []);
  return times.reduce((sum, ms) => sum + ms, 0) / times.length;
};

describe('a made child', () => {
  test('without a fault answers everything right', () => {
    expect(mark(sat(untimed))).toMatchObject({ right: 25, wrong: 0, skipped: 0 });
    expect(sat(untimed).visits.every(({ took }) => took === 'done')).toBe(true);
    expect(sat(timed(prompts)).visits.every(({ took }) => took === 'itself')).toBe(true);
  });

  test('sits the same again from the same seed', () => {
    expect(sat(untimed, { slipping: 0.2, skipping: 0.2 }, 4)).toEqual(
      sat(untimed, { slipping: 0.2, skipping: 0.2 }, 4),
    );
  });

  test('that never remembers and skips comes back to what it skipped', () => {
    const state = sat(untimed, { before: () => 0, learning: 0, skipping: 1 });
    expect(state.visits.map(({ end }) => end)).toEqual(Array(50).fill('skipped'));
    expect(state.ended).toBe('finished');
  });

  test('that always hurries is quicker and often wrong', () => {
    const hasty = { rushing: { untimed: 1, timed: 1 } };
    expect(meanThink(sat(untimed, hasty))).toBeLessThan(meanThink(sat(untimed)) * 0.85);
    expect(mark(sat(untimed, hasty)).wrong).toBeGreaterThan(5);
  });

  test('that checks takes longer and is as right', () => {
    expect(meanThink(sat(untimed, { checking: 1 }))).toBeGreaterThan(meanThink(sat(untimed)) * 1.2);
    expect(mark(sat(untimed, { checking: 1 })).right).toBe(25);
  });

  test('whom the clock moves is moved by it alone', () => {
    const moved = { clock: { logThink: Math.log(1.5), accuracy: 1 } };
    expect(mark(sat(untimed, moved)).right).toBe(25);
    expect(mark(sat(timed(prompts), moved)).right).toBe(0);
    expect(meanThink(sat(timed(prompts), moved))).toBeGreaterThan(meanThink(sat(timed(prompts))) * 1.15);
  });

  test('once called away goes on as it does without the clock', () => {
    const moved = { clock: { logThink: 0, accuracy: 1 } };
    const state = sat(timed(prompts), moved, 1, { what: 'away', afterCards: 5, awayMs: 60_000 });
    expect(mark(state)).toMatchObject({ wrong: 5, right: 20, noBand: 'interrupted' });
    expect(state.visits[5]?.end).toBe('left');
    expect(state.away).toHaveLength(1);
    expect((state.away[0]?.toMs ?? 0) - (state.away[0]?.fromMs ?? 0)).toBeCloseTo(60_000);
  });

  test('stopped by a grown-up has answered what it had', () => {
    const state = sat(untimed, {}, 1, { what: 'stopped', afterCards: 4 });
    expect(state.ended).toBe('stopped');
    expect(mark(state)).toMatchObject({ right: 4, unfinished: 1, notReached: 20 });
  });

  test('that is slow is stopped by the bell, and the card on screen does not count', () => {
    const slow = { hand: { ...faultless.hand, firstKeyMs: 3000 } };
    const state = sat(timed(prompts, { clock: clock45 }), slow);
    expect(state.ended).toBe('bell');
    expect(mark(state).rightByBell).toBe(mark(state).right - 1);
  });

  test('takes back a slip of the finger that it notices, and not one that it does not', () => {
    expect(mark(sat(untimed, { slipping: 1, noticing: 1 })).right).toBe(25);
    expect(mark(sat(untimed, { slipping: 1, noticing: 0 })).right).toBe(0);
  });

  test('opens the card again where it took the slip by itself', () => {
    const state = sat(timed(prompts), { slipping: 0.2, noticing: 1 });
    const reopened = state.visits.filter(({ from }) => from !== undefined);
    expect(reopened.length).toBeGreaterThan(0);
    expect(state.visits.filter(({ end }) => end === 'back')).toHaveLength(reopened.length);
    const last = state.ended === 'bell' ? 1 : 0;
    expect(mark(state).wrong).toBeLessThanOrEqual(last);
  });

  test('copies a fact that is shown after a miss', () => {
    const mending = planOf(prompts.slice(0, 5), { purpose: 'mending', onWrong: 'showAgain' });
    const state = sat(mending, { right: { memory: 0, step: 0 } });
    expect(state.visits.map(({ shown = false }) => shown)).toEqual(Array(5).fill([false, true]).flat());
    expect(state.ended).toBe('finished');
  });

  test('remembers better what it has met, and its turn-around half as much', () => {
    const mind = makeMind({ ...faultless, before: () => 3, learning: 2 });
    mind.meet(known('mul-7-8'));
    expect(mind.exposures(known('mul-7-8'))).toBe(5);
    expect(mind.exposures(known('mul-8-7'))).toBe(4);
    expect(mind.exposures(known('mul-8-8'))).toBe(3);
  });

  test('tries something out on a copy without learning from it', () => {
    const mind = makeMind(faultless);
    const before = mind.exposures(known('mul-2-2'));
    sit(untimed, mind.copy(), makeChance(1));
    expect(mind.exposures(known('mul-2-2'))).toBe(before);
    sit(untimed, mind, makeChance(1));
    expect(mind.exposures(known('mul-2-2'))).toBeGreaterThan(before);
  });
});

test('whatever a child is like, its sitting ends, its times rise and no key is lost', () => {
  const share = fc.double({ min: 0, max: 0.9, noNaN: true });
  const anyone = fc.record({
    slipping: share,
    noticing: share,
    skipping: share,
    checking: share,
    before: fc.constant(() => 12),
  });
  fc.assert(
    fc.property(anyone, fc.nat(), fc.boolean(), (changes, seed, hasClock) => {
      const state = sat(hasClock ? timed(prompts) : untimed, changes, seed);
      expect(['finished', 'bell']).toContain(state.ended);
      const times = state.visits.flatMap(({ onsetMs, keys, late = 0 }) => [
        onsetMs ?? -1,
        ...keys.slice(0, keys.length - late).map(([, atMs]) => atMs ?? -1),
      ]);
      expect(times.toSorted((x, y) => x - y)).toEqual(times);
      expect(state.visits.every(({ end, keys }) => end === 'left' || keys.length > 0)).toBe(true);
    }),
    { numRuns: 60 },
  );
});
