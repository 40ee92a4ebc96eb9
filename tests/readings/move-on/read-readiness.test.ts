import { describe, expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { accuracyOf } from '../../../src/core/summary/accuracy';
import { summarize } from '../../../src/core/summary/summarize';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { readReadiness } from '../../../src/readings/move-on/read-readiness';
import { childOf, copiesAt, type Did, logOf, sheetOf } from '../made-log';

const set: readonly FactId[] = ['mul-4-2', 'mul-4-3', 'mul-4-6', 'mul-4-7', 'mul-4-8', 'mul-4-9'];
const { settings } = childOf('wren', 'Wren');

const sheets = (days: number, did: (fact: FactId, at: number) => Did) =>
  Array.from({ length: days }, (_, at) =>
    sheetOf(
      at,
      set.map((fact) => did(fact, at)),
    ),
  );

const read = (sats: ReturnType<typeof sheets>, timed = false) => {
  const log = logOf([copiesAt(0, 400), ...sats], set, { settings: { ...settings, timed } });
  return readReadiness(log, readFacts(log));
};
const quick = (fact: FactId): Did => [fact, 1200];

describe('ready to move on', () => {
  it('is a set that is accurate, its facts quick', () => {
    expect(read(sheets(14, quick))).toMatchObject({
      isReady: true,
      quick: 6,
      facts: 6,
      heldBack: [],
      lastRight: 50,
      lastOf: 50,
      isAccurate: true,
    });
  });

  it('is not one with a fact to learn, which is named first', () => {
    const readiness = read(sheets(14, (fact) => (fact === 'mul-4-7' ? [fact, 1500, '27'] : quick(fact))));
    expect(readiness?.isReady).toBe(false);
    expect(readiness?.heldBack[0]).toEqual({ fact: 'mul-4-7', state: 'toLearn' });
    expect(readiness?.isAccurate).toBe(false);
  });

  it('is not one that is accurate and slow', () => {
    const readiness = read(sheets(14, (fact) => [fact, 6000]));
    expect(readiness).toMatchObject({ isAccurate: true, isReady: false, quick: 0 });
    expect(new Set(readiness?.heldBack.map(({ state }) => state))).toEqual(new Set(['slow']));
  });

  it('is not one hardly begun: facts not yet met hold it back', () => {
    const readiness = read(sheets(2, quick));
    expect(readiness).toMatchObject({ isReady: false, lastOf: 12, isAccurate: false });
    expect(readiness?.heldBack).toHaveLength(6);
  });

  it('is nothing without a set', () => {
    const log = logOf([], [], { currentSet: null });
    expect(readReadiness(log, readFacts(log))).toBeNull();
  });

  it('without times asks only that the facts come right', () => {
    const untimed = sheets(14, quick).map((sat) => ({
      ...sat,
      keepTimes: false,
      visits: sat.visits.map((visit) => ({ ...visit, onsetMs: null, endMs: null })),
    }));
    expect(read(untimed)).toMatchObject({ isReady: true, heldBack: [] });
  });
});

describe('the clock', () => {
  it('may be turned on once the set is accurate, and not before', () => {
    expect(read(sheets(14, quick))?.clock).toBe('timeIt');
    expect(read(sheets(5, quick))?.clock).toBe('fine');
  });

  it('that is on too soon is told', () => {
    expect(read(sheets(5, quick), true)?.clock).toBe('notYet');
    expect(read(sheets(14, quick), true)?.clock).toBe('fine');
  });

  it('is judged by the same count as the plan’s', () => {
    for (let wrongEvery = 3; wrongEvery < 16; wrongEvery += 1) {
      const sats = sheets(11, (fact, at) =>
        (at * 6 + set.indexOf(fact)) % wrongEvery === 0 ? [fact, 1200, '1'] : quick(fact),
      );
      const log = logOf(sats, set);
      const { right, of } = accuracyOf(summarize(log.sats.map(({ ruled }) => ruled)), new Set(set));
      expect(readReadiness(log, readFacts(log))).toMatchObject({ lastRight: right, lastOf: of });
    }
  });
});
