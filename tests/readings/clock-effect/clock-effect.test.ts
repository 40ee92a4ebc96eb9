import fc from 'fast-check';
import { mean, median } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { makeDice } from '../../../src/core/sheet/dice';
import { clockEffect } from '../../../src/readings/clock-effect/clock-effect';
import type { Meeting } from '../../../src/readings/clock-effect/meeting';
import { pairDays } from '../../../src/readings/clock-effect/pair-days';
import { exactMcNemar } from '../../../src/readings/statistics/mcnemar';
import { signedRank } from '../../../src/readings/statistics/signed-rank';

const fact = (which: number): FactId => `mul-${2 + Math.floor(which / 8)}-${2 + (which % 8)}`;
const day = (number: number) => new Date(Date.UTC(2026, 0, 1 + number)).toISOString().slice(0, 10);

const met = (
  which: number,
  at: number,
  withClock: boolean,
  firstKeyMs: number | null,
  right = true,
): Meeting => ({
  fact: fact(which),
  day: day(at),
  withClock,
  where: 'tablet touch element',
  right,
  firstKeyMs,
});

/** Meetings of `facts` facts on days in turn, with the clock on every second one. */
function days(count: number, facts: number, of: (which: number, at: number, withClock: boolean) => Meeting) {
  return Array.from({ length: count }, (_, at) => at).flatMap((at) =>
    Array.from({ length: facts }, (_, which) => of(which, at, at % 2 === 1)),
  );
}

const shape = (kinds: string) => {
  const pairs = pairDays(
    [...kinds].map((kind, at) => met(0, at, kind === 'C', 1000)),
    28,
  );
  return pairs.map((pair) => `${pair.without.day.slice(-2)}-${pair.withClock.day.slice(-2)}`);
};

describe('days set side by side', () => {
  it('are neighbours of the two kinds, each used once', () => {
    expect(shape('NCNCNC')).toEqual(['01-02', '03-04', '05-06']);
    expect(shape('NNNCCC')).toEqual(['03-04', '02-05', '01-06']);
    expect(shape('NNNNC')).toEqual(['04-05']);
    expect(shape('CCCN')).toEqual(['04-03']);
    expect(shape('NNNN')).toEqual([]);
  });

  it('are never too far apart, and never joined across devices', () => {
    expect(pairDays([met(0, 0, false, 900), met(0, 28, true, 900)], 28)).toHaveLength(1);
    expect(pairDays([met(0, 0, false, 900), met(0, 29, true, 900)], 28)).toHaveLength(0);
    expect(
      pairDays([met(0, 0, false, 900), { ...met(0, 1, true, 900), where: 'laptop keys frame' }], 28),
    ).toEqual([]);
  });

  it('do not depend on the answers: the same days are paired whatever was right and however long it took', () => {
    const meeting = fc.record({
      at: fc.nat(60),
      clock: fc.boolean(),
      ms: fc.integer({ min: 300, max: 9000 }),
      right: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(meeting, { maxLength: 40 }), (all) => {
        const paired = (list: readonly Meeting[]) =>
          pairDays(list, 28).map(({ withClock, without }) => [withClock.day, without.day]);
        const one = paired(all.map(({ at, clock, ms, right }) => met(0, at, clock, ms, right)));
        const other = paired(all.map(({ at, clock, ms, right }) => met(0, at, clock, 9300 - ms, !right)));
        expect(other).toEqual(one);
        expect(new Set(one.map(([with_]) => with_)).size).toBe(one.length);
        expect(new Set(one.map(([, without]) => without)).size).toBe(one.length);
      }),
    );
  });

  it('collapse a fact met often on a day to one share and one middle time', () => {
    const [pair] = pairDays(
      [met(0, 0, false, 800), met(0, 0, false, 900, false), met(0, 0, false, 9000), met(0, 1, true, 1000)],
      28,
    );
    expect(pair?.without.share).toBeCloseTo(2 / 3, 12);
    expect(pair?.without.logMs).toBeCloseTo(Math.log(900), 12);
  });
});

describe('the clock effect', () => {
  it('finds times half as long again, with the ratio in its interval, and says slower', () => {
    const effect = clockEffect(
      days(12, 12, (which, at, clock) =>
        met(which, at, clock, (1000 + 90 * which + 7 * at) * (clock ? 1.5 : 1)),
      ),
    );
    expect(effect).toMatchObject({ facts: 12, daysWith: 6, daysWithout: 6, clockLaterDays: 1 });
    expect(effect.time.claim).toBe('slower');
    expect(effect.time.ratio).toBeCloseTo(1.5, 1);
    expect(effect.time.interval?.low).toBeGreaterThan(1.4);
    expect(effect.time.pTwoSided).toBeCloseTo(2 / 2 ** 12, 12);
    expect(effect.time.byDay).toEqual({ days: 6, pTwoSided: 0.03125 });
    expect(effect.accuracy).toEqual({
      worse: 0,
      better: 0,
      same: 12,
      pTwoSided: 1,
      claim: null,
      noClaim: 'tooFewFacts',
    });
  });

  it('turns round when the kinds of days are exchanged', () => {
    const ms = fc.integer({ min: 400, max: 6000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(ms, ms, fc.boolean(), fc.boolean()), { minLength: 6, maxLength: 20 }),
        (facts) => {
          const meetings = facts.flatMap(([one, other, r1, r2], which) => [
            met(which, 0, false, one, r1),
            met(which, 1, true, other, r2),
          ]);
          const effect = clockEffect(meetings);
          const turned = clockEffect(
            meetings.map((meeting) => ({ ...meeting, withClock: !meeting.withClock })),
          );
          expect((effect.time.ratio ?? 0) * (turned.time.ratio ?? 0)).toBeCloseTo(1, 9);
          expect(turned.time.pTwoSided).toBeCloseTo(effect.time.pTwoSided, 12);
          expect([turned.accuracy.worse, turned.accuracy.better]).toEqual([
            effect.accuracy.better,
            effect.accuracy.worse,
          ]);
        },
      ),
    );
  });

  it('with one meeting of each kind it is the plain test on paired facts', () => {
    const ms = fc.integer({ min: 400, max: 6000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(ms, ms, fc.boolean(), fc.boolean()), { minLength: 1, maxLength: 20 }),
        (facts) => {
          const effect = clockEffect(
            facts.flatMap(([one, other, r1, r2], which) => [
              met(which, 0, false, one, r1),
              met(which, 1, true, other, r2),
            ]),
          );
          const logs = facts.map(([one, other]) => Math.log(other) - Math.log(one));
          const walsh = logs.flatMap((x, i) => logs.slice(i).map((y) => (x + y) / 2));
          expect(Math.log(effect.time.ratio ?? 0)).toBeCloseTo(median(walsh), 9);
          expect(effect.time.pTwoSided).toBeCloseTo(signedRank(logs).pTwoSided, 12);
          const worse = facts.filter(([, , without, withClock]) => without && !withClock).length;
          const better = facts.filter(([, , without, withClock]) => !without && withClock).length;
          expect(effect.accuracy).toMatchObject({
            worse,
            better,
            pTwoSided: exactMcNemar(worse, better).pTwoSided,
          });
        },
      ),
    );
  });

  it('makes no claim from five one-way items, and one from six', () => {
    const wrongWith = (items: number) =>
      clockEffect(days(12, 10, (which, at, clock) => met(which, at, clock, null, !(clock && which < items))))
        .accuracy;
    expect(wrongWith(5)).toMatchObject({ worse: 5, better: 0, claim: null, noClaim: 'tooFewFacts' });
    expect(wrongWith(6)).toMatchObject({
      worse: 6,
      better: 0,
      claim: 'worse',
      noClaim: null,
      pTwoSided: 0.03125,
    });
  });

  it('seven one way and one the other are not beyond chance', () => {
    const effect = clockEffect(
      days(12, 10, (which, at, clock) => met(which, at, clock, null, clock ? which >= 7 : which !== 7)),
    );
    expect(effect.accuracy).toMatchObject({ worse: 7, better: 1, claim: null, noClaim: 'notBeyondChance' });
  });

  it('makes no claim from five days of a kind, however many facts', () => {
    const slow = (count: number) =>
      clockEffect(
        days(count, 20, (which, at, clock) => met(which, at, clock, (800 + which) * (clock ? 2 : 1), !clock)),
      );
    expect(slow(10).time).toMatchObject({ claim: null, noClaim: 'tooFewDays' });
    expect(slow(10).accuracy).toMatchObject({ claim: null, noClaim: 'tooFewDays' });
    expect(slow(12).time.claim).toBe('slower');
    expect(slow(12).accuracy.claim).toBe('worse');
  });

  it('makes no claim of one bad spell: all facts slower on four days with the clock, a little quicker on three', () => {
    const effect = clockEffect(
      days(14, 15, (which, at, clock) =>
        met(which, at, clock, (1000 + which) * (!clock ? 1 : at < 8 ? 1.4 : 0.9)),
      ),
    );
    expect(effect.time.pTwoSided).toBeLessThan(0.001);
    expect(effect.time).toMatchObject({ claim: null, noClaim: 'notOnMostDays' });
  });

  it('takes nothing for the clock that practice alone could do, but does not excuse what practice can’t', () => {
    const blocks = (clockFirst: boolean, factor: (clock: boolean) => number) =>
      clockEffect(
        Array.from({ length: 14 }, (_, at) => at).flatMap((at) =>
          Array.from({ length: 10 }, (_, which) => {
            const clock = at < 7 === clockFirst;
            return met(which, at, clock, (1000 + which) * factor(clock));
          }),
        ),
      ).time;
    const quicker = (clock: boolean) => (clock ? 0.8 : 1);
    const slower = (clock: boolean) => (clock ? 1.3 : 1);
    expect(blocks(false, quicker)).toMatchObject({ claim: null, noClaim: 'practice' });
    expect(blocks(true, quicker).claim).toBe('faster');
    expect(blocks(false, slower).claim).toBe('slower');
    expect(blocks(true, slower)).toMatchObject({ claim: null, noClaim: 'practice' });
  });

  it('joins what two devices say without ever setting one beside the other', () => {
    const both = days(14, 10, (which, at, clock) => {
      const laptop = at % 4 >= 2;
      const ms = (laptop ? 3000 : 1000) * (clock ? 1.4 : 1) + which;
      return { ...met(which, at, clock, ms), where: laptop ? 'laptop' : 'tablet' };
    });
    expect(clockEffect(both).time.ratio).toBeCloseTo(1.4, 2);
  });

  it('asks more where several looks are taken', () => {
    const meetings = days(12, 8, (which, at, clock) =>
      met(which, at, clock, (800 + which) * (clock ? 1.3 : 1)),
    );
    expect(clockEffect(meetings).time.claim).toBe('slower');
    expect(clockEffect(meetings, 0.0038).time).toMatchObject({ claim: null, noClaim: 'notBeyondChance' });
  });

  it('without times, or without both kinds of day, says nothing', () => {
    expect(clockEffect([])).toMatchObject({
      facts: 0,
      clockLaterDays: null,
      time: { ratio: null, noClaim: 'tooFewFacts' },
    });
    const untimed = clockEffect(days(12, 10, (which, at, clock) => met(which, at, clock, null)));
    expect(untimed.time).toMatchObject({
      facts: 0,
      ratio: null,
      interval: null,
      pTwoSided: 1,
      noClaim: 'tooFewFacts',
    });
    expect(clockEffect(days(12, 10, (which, at) => met(which, at, false, 900))).facts).toBe(0);
  });

  // From fixed dice, so it never wavers. A true .05 would pass .09 of 400 runs less than once in 1,000 times.
  const falseClaims = (daySpread: number) => {
    const dice = makeDice(20260105);
    const noise = () => mean(Array.from({ length: 12 }, () => dice.below(1000) / 1000)) - 0.5;
    const runs = 400;
    let claims = 0;
    for (let run = 0; run < runs; run += 1) {
      const mood = Array.from({ length: 16 }, () => daySpread * 12 * noise());
      const effect = clockEffect(
        days(16, 15, (which, at, clock) =>
          met(which, at, clock, 1000 * Math.exp(0.02 * which + (mood[at] ?? 0) + 4 * noise())),
        ),
      );
      if (effect.time.claim !== null) claims += 1;
    }
    return claims / runs;
  };

  it('where the clock does nothing, claims about times in at most 5 of 100 children', () => {
    expect(falseClaims(0)).toBeLessThanOrEqual(0.05);
  });

  it('and in hardly more where whole days are good or bad, which is not the clock’s doing', () => {
    expect(falseClaims(0.1)).toBeLessThanOrEqual(0.09);
    expect(falseClaims(0.2)).toBeLessThanOrEqual(0.09);
  });
});
