import { describe, expect, it } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { effectiveHistory } from '../../../src/core/household/history';
import { isOfHistory, type LogRecord } from '../../../src/core/record/record';
import { makeBoat } from '../../../src/demo/make-boat';
import { type ChildReading, childReading } from '../../../src/parent/reading/child-reading';
import {
  mayProposeClock,
  moreTime,
  saidOfClockCost,
  saidOfClockTooSoon,
  saidOfReadiness,
  saidOfSheet,
} from '../../../src/parent/reading/said';
import type { ChildLog } from '../../../src/readings/child-log/child-log';
import { readTrial } from '../../../src/readings/clock-trial/read-trial';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { readReadiness } from '../../../src/readings/move-on/read-readiness';
import { readClockEffect } from '../../../src/readings/over-time/read-clock-effect';
import { readSitting } from '../../../src/readings/sitting-verdict/read-sittings';
import { cells } from '../../readings/simulator/cells';
import { runOf } from '../../readings/simulator/run';

/** What a parent is told to do, by the words it is told in. */
const advice = {
  moveOn: /looks ready to move on/,
  clockOn: /[Yy]ou may turn the clock on/,
  clockOff: /better leave it off|Try a few days without the clock|try the clock off/,
  clockCosts: /On days with the clock \S+ (takes .* longer to begin|is less often right)/,
  moreTime: /s would bring|^Allow/,
} as const;
type Advice = keyof typeof advice;

/** Pairs that pull in opposite ways, or of which one is told again by the other. */
const apart: readonly (readonly [Advice, Advice])[] = [
  ['moveOn', 'clockOn'],
  ['moveOn', 'moreTime'],
  ['moveOn', 'clockCosts'],
  ['clockOn', 'clockOff'],
  ['clockOn', 'clockCosts'],
  ['clockOn', 'moreTime'],
  ['clockOff', 'moreTime'],
  ['clockCosts', 'moreTime'],
];

/** All that Today and Facts say of a child on the day of its last sheet. */
function told(reading: ChildReading): readonly string[] {
  const { readiness, log } = reading;
  const { timed } = reading.child.settings;
  const sheet = log.sats.findLast(({ ruled: { sat } }) => sat.purpose === 'sheet')?.ruled.sat.id ?? null;
  const more = timed ? moreTime(reading, sheet) : null;
  const soon = timed ? saidOfClockTooSoon(reading) : null;
  const isProposed = !timed && readiness?.isAccurate && mayProposeClock(reading);
  return [
    ...(sheet === null ? [] : saidOfSheet(reading, sheet)),
    ...saidOfReadiness(reading),
    ...(timed ? saidOfClockCost(reading, sheet) : []),
    ...[soon, more?.said].flatMap((said) => said ?? []),
  ]
    .map(({ text }) => text.replaceAll('\u00a0', ' '))
    .concat(isProposed ? ['You may turn the clock on.'] : [])
    .concat(more?.restoringS ? [`Allow ${more.restoringS} s`] : []);
}

function adviceIn(texts: readonly string[]): ReadonlySet<Advice> {
  const names = Object.keys(advice) as readonly Advice[];
  return new Set(names.filter((name) => texts.some((text) => advice[name].test(text))));
}

function boatReadings(today: string, seed: number): readonly ChildReading[] {
  const { records }: { readonly records: readonly LogRecord[] } = makeBoat(today, seed);
  const household = foldHousehold(records.flatMap((record) => (isOfHistory(record) ? [] : [record])));
  const history = effectiveHistory(records.filter(isOfHistory), household);
  return household.children.map((child) => childReading(household, history, child));
}

/** The same child with the clock on or off, after each of its later sheets. */
function madeReadings(log: ChildLog): readonly ChildReading[] {
  return [true, false].flatMap((timed) =>
    [11, log.sats.length].map((upTo) => {
      const settings = { ...log.child.settings, timed };
      return readingOf({ ...log, child: { ...log.child, settings }, sats: log.sats.slice(0, upTo) });
    }),
  );
}

function readingOf(log: ChildLog): ChildReading {
  const facts = readFacts(log);
  const last = log.sats.at(-1)?.ruled.sat.id ?? '';
  const read = new Map([[last, readSitting(log, last)]]);
  const made = {
    child: log.child,
    log,
    facts,
    readiness: readReadiness(log, facts),
    rates: [],
    clockEffect: readClockEffect(log),
    trial: readTrial(log),
    sitting: (id: string) => read.get(id) ?? readSitting(log, id),
    // All is made already.
    *prepare() {},
  };
  return made;
}

describe('no two pieces of advice that contradict each other are given together', () => {
  const seen = new Set<Advice>();
  const check = (reading: ChildReading, where: string) => {
    const texts = told(reading);
    const given = adviceIn(texts);
    for (const one of given) seen.add(one);
    for (const [one, other] of apart)
      expect(given.has(one) && given.has(other), `${where}: ${texts.join(' | ')}`).toBe(false);
  };

  it('to any child of the boat', () => {
    for (const reading of boatReadings('2026-11-25', 20_260)) check(reading, reading.child.name);
  });

  it('to any made child, with the clock on or off', () => {
    for (const [cell, make] of Object.entries(cells))
      for (const reading of madeReadings(runOf(make, 61).log)) check(reading, cell);
  });

  it('though each of them is given to some', () => {
    expect([...seen].sort()).toEqual(expect.arrayContaining(['clockCosts', 'clockOff', 'clockOn', 'moveOn']));
  });
});
