import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { accuracyOf, isNew } from '../../../src/core/summary/accuracy';
import { summarize } from '../../../src/core/summary/summarize';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { readReadiness } from '../../../src/readings/move-on/read-readiness';
import { stillNew } from '../../../src/readings/move-on/still-new';
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
    expect(readiness?.heldBack).toEqual([{ fact: 'mul-4-7', state: 'toLearn', isNew: true }]);
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

  it('is one of which no single fact is sure yet, as long as each looks quick and all together are accurate', () => {
    const readiness = read(
      sheets(9, (fact, at) => (at === set.indexOf(fact) ? [fact, 1200, '1'] : quick(fact))),
    );
    expect(readiness).toMatchObject({ isReady: true, quick: 0, heldBack: [], lastRight: 45 });
  });

  it('is not one with a fact that was right at first try on two days only', () => {
    const late = (fact: FactId, at: number): Did =>
      fact === 'mul-4-9' && at < 12 ? ['mul-4-8', 1200] : quick(fact);
    const readiness = read(sheets(14, late));
    expect(readiness).toMatchObject({ isReady: false, isAccurate: true });
    expect(readiness?.heldBack).toEqual([{ fact: 'mul-4-9', state: 'notEnough', isNew: true }]);
    expect(read([...sheets(14, late), ...sheets(15, quick).slice(14)])).toMatchObject({ isReady: true });
  });

  it('holds one slow fact in ten against no set, and one in six against one', () => {
    const oneSlow = (fact: FactId): Did => [fact, fact === 'mul-4-7' ? 6000 : 1200];
    expect(read(sheets(14, oneSlow))).toMatchObject({ isReady: false });
    const ten: readonly FactId[] = [...set, 'mul-4-4', 'mul-4-5', 'mul-2-4', 'mul-3-4'];
    const sats = Array.from({ length: 14 }, (_, at) => sheetOf(at, ten.map(oneSlow)));
    const log = logOf([copiesAt(0, 400), ...sats], ten);
    expect(readReadiness(log, readFacts(log))).toMatchObject({
      isReady: true,
      heldBack: [{ fact: 'mul-4-7', state: 'slow', isNew: false }],
    });
  });

  it('counts nothing against a fact that goes wrong with the clock alone', () => {
    const clock = { allowanceMs: 45_000, sight: 'thread' } as const;
    const [first, ...others] = set;
    const careless = Array.from({ length: 28 }, (_, at) =>
      at % 2 === 0
        ? sheetOf(at, set.map(quick))
        : sheetOf(at, [[first ?? 'mul-4-2', 700, '3'], ...others.map(quick)], { clock }),
    );
    expect(read(careless)).toMatchObject({ isReady: true, heldBack: [] });
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

describe('a fact still new', () => {
  it('is one that the plan calls new, whatever was sat in between', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.constantFrom(...set), { maxLength: 8 }), { maxLength: 12 }),
        fc.nat(6),
        (days, wrongEvery) => {
          const sats = days.map((facts, at) =>
            sheetOf(
              at,
              facts.map((fact, place) =>
                (at + place) % (wrongEvery + 2) === 0 ? [fact, 1200, '1'] : quick(fact),
              ),
              at % 4 === 3 ? { purpose: 'cards', onWrong: 'showAgain', shownFirst: [0] } : {},
            ),
          );
          const log = logOf(sats, set);
          const summary = summarize(log.sats.map(({ ruled }) => ruled));
          const fresh = stillNew(log, { id: 'times-4', facts: new Set(set) });
          for (const fact of set) expect(fresh.has(fact)).toBe(isNew(summary, new Set([fact])));
        },
      ),
    );
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
