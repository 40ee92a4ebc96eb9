import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSitting, readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import { mayStandTogether, type VerdictName } from '../../../src/readings/sitting-verdict/verdict';
import { cells } from '../simulator/cells';
import { verdictNames } from '../simulator/evaluate';
import { runOf } from '../simulator/run';

const name = fc.constantFrom<VerdictName>(...verdictNames);

describe('verdicts', () => {
  it('stand together or not, whichever is named first', () => {
    fc.assert(
      fc.property(name, name, (x, y) => {
        expect(mayStandTogether(x, y)).toBe(mayStandTogether(y, x));
      }),
    );
  });

  it('hurry is never given with fluster, checking with not knowing, fine or “cannot tell” with anything', () => {
    expect(mayStandTogether('rushed', 'flustered')).toBe(false);
    expect(mayStandTogether('rushed', 'checking')).toBe(false);
    expect(mayStandTogether('checking', 'notKnown')).toBe(false);
    for (const other of verdictNames) {
      if (other !== 'fine') expect(mayStandTogether('fine', other)).toBe(false);
      if (other !== 'cannotTell') expect(mayStandTogether('cannotTell', other)).toBe(false);
    }
    expect(mayStandTogether('flustered', 'notKnown')).toBe(true);
  });

  const runs = Object.entries(cells).flatMap(([cell, make]) =>
    [71, 72, 73].map((seed) => ({
      cell,
      readings: readSittings(runOf(make, seed).log).sittings,
      log: runOf(make, seed).log,
    })),
  );

  it('of made children of every kind: at least one a sheet, none twice, no two that contradict each other', () => {
    for (const { cell, readings } of runs) {
      for (const { verdicts } of readings) {
        const names = verdicts.map((verdict) => verdict.name);
        expect(names.length, cell).toBeGreaterThan(0);
        expect(new Set(names).size).toBe(names.length);
        for (const x of names) for (const y of names) expect(mayStandTogether(x, y), `${x} ${y}`).toBe(true);
      }
    }
  });

  it('no fact is given two causes', () => {
    for (const { readings } of runs) {
      for (const { verdicts } of readings) {
        const facts = verdicts.flatMap((verdict) =>
          verdict.name === 'new' || verdict.name === 'notKnown' ? verdict.facts : [],
        );
        expect(new Set(facts).size).toBe(facts.length);
      }
    }
  });

  it('are the same for one sheet as for it among all, and never change with what comes later', () => {
    for (const { readings, log } of runs.slice(0, 8)) {
      const middle = readings[9];
      if (!middle) throw new Error('a run has sixteen sheets');
      expect(readSitting(log, middle.sitting)).toEqual(middle);
      const upTo = log.sats.findIndex(({ ruled }) => ruled.sat.id === middle.sitting);
      expect(readSitting({ ...log, sats: log.sats.slice(0, upTo + 1) }, middle.sitting)).toEqual(middle);
    }
  });

  it('without the clock nobody is called flustered or slow of hand', () => {
    const untimed = runs.flatMap(({ readings }) => readings.filter(({ timed }) => !timed));
    const names = new Set(untimed.flatMap(({ verdicts }) => verdicts.map((verdict) => verdict.name)));
    expect(names.has('flustered')).toBe(false);
    expect(names.has('slowHands')).toBe(false);
  });
});
