import type { Id } from '../../core/record/stamp';
import { sentencesOfSheet } from '../../readings/sentences/of-sheet';
import { sentenceOfKeypad, sentencesOfClock, sentencesOfReadiness } from '../../readings/sentences/of-time';
import { say } from '../../readings/sentences/say';
import type { Said } from '../../readings/sentences/sentence';
import type { ChildReading } from './child-reading';
import { keypadNow } from './keypad';

/** What one sheet says, with its evidence; nothing of anything but a sheet. */
export function saidOfSheet(reading: ChildReading, sheet: Id): readonly Said[] {
  const read = reading.sitting(sheet);
  return read ? sentencesOfSheet(read).map((sentence) => say(sentence, reading.child.name)) : [];
}

/** The same beside a line that gives the count already: without it, unless some facts were not reached. */
export function saidBesideCount(reading: ChildReading, sheet: Id): readonly Said[] {
  const read = reading.sitting(sheet);
  if (!read) return [];
  return sentencesOfSheet(read)
    .filter(({ kind }) => (kind !== 'byBell' && kind !== 'atEase') || read.reached < read.length)
    .map((sentence) => say(sentence, reading.child.name));
}

/** Whether the current set may be moved on from, and whether to time it. */
export function saidOfReadiness({ readiness, child }: ChildReading): readonly Said[] {
  return readiness ? sentencesOfReadiness(readiness).map((sentence) => say(sentence, child.name)) : [];
}

/**
 * Where days with the clock go worse than days without; nothing during a trial, which decides about the clock by
 * itself, nor beside a sheet that was rushed, which would be another cause for the same.
 */
export function saidOfClockCost(reading: ChildReading, sheet: Id | null): readonly Said[] {
  const { clockEffect, trial, child } = reading;
  const verdicts = sheet === null ? [] : (reading.sitting(sheet)?.verdicts ?? []);
  if (verdicts.some(({ name }) => name === 'rushed')) return [];
  if (trial && !trial.trial.isStopped && !trial.isWhole) return [];
  const costs = clockEffect.time.claim === 'slower' || clockEffect.accuracy.claim === 'worse';
  return costs ? sentencesOfClock(clockEffect).map((sentence) => say(sentence, child.name)) : [];
}

/** Before the first sheet with the clock of a set that is not accurate yet; else nothing. */
export function saidOfClockTooSoon({ readiness, log, trial, child }: ChildReading): Said | null {
  if (!readiness || readiness.isAccurate) return null;
  if (trial && !trial.trial.isStopped && !trial.isWhole) return null;
  const wasTimed = log.sats.some(
    ({ ruled: { sat } }) => sat.purpose === 'sheet' && sat.clock !== null && sat.set === readiness.set,
  );
  const { lastRight, lastOf } = readiness;
  return wasTimed ? null : say({ kind: 'timedTooSoon', lastRight, lastOf }, child.name);
}

/** What the keys allow: that a band is out of reach of these hands, or that they were never measured. */
export function saidOfKeypad(reading: ChildReading): Said | null {
  const { allowanceS } = reading.child.settings;
  const sentence = sentenceOfKeypad(keypadNow(reading), allowanceS * 1000);
  return sentence && say(sentence, reading.child.name);
}
