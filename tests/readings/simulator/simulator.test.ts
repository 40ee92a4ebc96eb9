import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { makeFact } from '../../../src/core/fact/fact';
import type { Sat, SittingPlan } from '../../../src/core/record/sat';
import { beginSitting, sealSitting, stepSitting } from '../../../src/core/sitting/machine';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { cells } from './cells';
import { makeChance } from './chance';
import { factStatesOf, verdictsOf } from './evaluate';
import { copyPlan, dayAt, runOf, sheetPlan } from './run';
import { type ScriptedCard, scriptOf } from './script';
import { madeStamp, madeStart, sitFast, type When } from './sit-fast';
import { ageScaling, rememberedShare, thinkMedians } from './strategy';

/** The same script on the real machine. */
function sitOnMachine(plan: SittingPlan, script: readonly ScriptedCard[], when: When): Sat {
  const micro = (ms: number) => Math.round(ms * 1000) / 1000;
  let state = beginSitting(plan);
  let atMs = 40;
  for (const { turnMs, keys } of script) {
    if (state.phase === 'ended') break;
    atMs = micro(atMs + turnMs);
    state = stepSitting(state, { type: 'shown', atMs, by: 'element' }).state;
    for (const { key, afterMs } of keys) {
      atMs = micro(atMs + afterMs);
      state = stepSitting(state, { type: 'key', key, atMs, via: 'touch' }).state;
    }
  }
  return { ...sealSitting(state, { ...madeStart, day: when.day }), ...madeStamp(when) } as Sat;
}

describe('the short way of sitting', () => {
  it('gives what the machine gives, with the clock and without, key for key', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const chance = makeChance(seed);
      const made = cells[seed % 2 === 0 ? 'slower ×1.5' : 'slow hands'](chance);
      const when = { day: dayAt(seed), nth: seed };
      for (const plan of [
        sheetPlan(made, true, seed, new Map()),
        sheetPlan(made, false, seed, new Map()),
        copyPlan,
      ]) {
        const script = scriptOf(made, plan, new Map(), chance);
        expect(sitFast(plan, script, when)).toEqual(sitOnMachine(plan, script, when));
      }
    }
  });
});

describe('the made children', () => {
  it('grow quicker with age as Kail 1991 has it (from memory)', () => {
    expect([7, 8, 9, 10, 12].map((years) => Number(ageScaling(years).toFixed(3)))).toEqual([
      2.186, 1.962, 1.78, 1.632, 1.415,
    ]);
  });

  // Zbrodoff 1995, alphabet arithmetic: seconds for +2, +3, +4 in three blocks of practice.
  const zbrodoff = [
    [1.84, 2.46, 2.82],
    [1.21, 1.45, 1.42],
    [1.14, 1.21, 1.17],
  ] as const;
  const slopeOf = (times: readonly number[]) => linearRegression(times.map((time, at) => [at + 2, time])).m;

  it('turn counting into memory as Zbrodoff’s learners did: the cost of a count falls at the same shares', () => {
    const published = zbrodoff.map(slopeOf);
    expect(published.map((slope) => Number(slope.toFixed(3)))).toEqual([0.49, 0.105, 0.015]);
    const exposures = [0, 26, 59];
    const made = exposures.map((met) => {
      const times = [2, 3, 4].map((n) => {
        const fact = makeFact('add', 9, n);
        if (!fact) throw new Error('9 + n is a fact');
        const { remembered, counted } = thinkMedians(fact, 9);
        return (counted - remembered) * (1 - rememberedShare(met));
      });
      return slopeOf(times);
    });
    const shares = made.map((slope) => slope / (made[0] ?? 1));
    const wanted = published.map((slope) => slope / 0.49);
    for (const [at, share] of shares.entries())
      expect(Math.abs(share - (wanted[at] ?? 0))).toBeLessThan(0.02);
  });

  it('are the same for the same seed', () => {
    const sats = (seed: number) => runOf(cells.calm, seed).log.sats.map(({ ruled }) => ruled.sat);
    expect(sats(5)).toEqual(sats(5));
    expect(sats(5)).not.toEqual(sats(6));
  });
});

/** A short form of the evaluation; the long one, and what it found, is in DEVELOPERS.md. */
describe('read by their sheets', { timeout: 120_000 }, () => {
  const seeds = Array.from({ length: 30 }, (_, at) => 880_000 + at);
  const flustered = (cell: keyof typeof cells) =>
    verdictsOf(cells[cell], seeds, 'drawn').ever.get('flustered') ?? 0;

  it('who is half as long again, or 15 in 100 less right, with the clock is called flustered', () => {
    expect(flustered('slower ×1.5')).toBeGreaterThanOrEqual(25);
    expect(flustered('less right −15')).toBeGreaterThanOrEqual(25);
  });

  it('who is calm, tired late, improving fast or does not know is not', () => {
    for (const cell of ['calm', 'tired late', 'improving fast', 'not knowing'] as const) {
      expect(flustered(cell), cell).toBeLessThanOrEqual(3);
    }
  });

  it('who hurries is called rushed and not flustered', () => {
    const { last } = verdictsOf(cells.rushing, seeds, 'drawn');
    expect(last.get('rushed')).toBeGreaterThanOrEqual(26);
    expect(last.get('flustered') ?? 0).toBeLessThanOrEqual(2);
  });

  it('who does not know is told so, flustered besides or not', () => {
    const both = verdictsOf(cells['flustered ×1.5 and not knowing'], seeds, 'drawn');
    expect(both.ever.get('notKnown')).toBeGreaterThanOrEqual(27);
    expect(both.ever.get('flustered')).toBeGreaterThanOrEqual(21);
  });

  it('one weak fact in a strong set is not called quick', () => {
    const { facts, atEnd } = factStatesOf({ right: 0.5, exposures: 60, which: 'one' }, seeds.slice(0, 12));
    expect(facts).toBe(12);
    expect(atEnd.get('quick') ?? 0).toBeLessThanOrEqual(1);
  });

  it('most facts known are called quick after sixteen sheets', () => {
    let [quick, of] = [0, 0];
    for (const seed of seeds.slice(0, 10)) {
      const { made, log } = runOf(cells.calm, seed);
      const readings = readFacts(log);
      of += made.setFacts.length;
      quick += made.setFacts.filter((fact) => readings.get(fact)?.state === 'quick').length;
    }
    expect(quick).toBeGreaterThan(of / 2);
  });
});
