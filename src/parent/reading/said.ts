import type { Id } from '../../core/record/stamp';
import type { Fairness } from '../../readings/hand-time/keypad-fairness';
import { sentenceOfFacts } from '../../readings/sentences/of-facts';
import { sentencesOfSheet } from '../../readings/sentences/of-sheet';
import {
  type ClockStands,
  clockStands,
  sentenceOfKeypad,
  sentencesOfClock,
  sentencesOfReadiness,
} from '../../readings/sentences/of-time';
import { say } from '../../readings/sentences/say';
import type { Said } from '../../readings/sentences/sentence';
import type { VerdictName } from '../../readings/sitting-verdict/verdict';
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

/** How many facts of all operations are known; told with it where the last sheet with the clock was rushed. */
export function saidOfFacts(reading: ChildReading): Said {
  const facts = [...reading.facts.values()];
  return say(sentenceOfFacts(facts, 'all', isRushed(reading)), reading.child.name);
}

/** Whether the last sheet with the clock was rushed. */
function isRushed(reading: ChildReading): boolean {
  const last = reading.log.sats.findLast(
    ({ ruled: { sat }, counts }) => counts && sat.purpose === 'sheet' && sat.clock !== null,
  );
  return last !== undefined && has(reading, last.ruled.sat.id, 'rushed');
}

function has(reading: ChildReading, sheet: Id, verdict: VerdictName): boolean {
  return reading.sitting(sheet)?.verdicts.some(({ name }) => name === verdict) ?? false;
}

/** Whether the current set may be moved on from, and whether to time it. */
export function saidOfReadiness(reading: ChildReading): readonly Said[] {
  const { readiness, child } = reading;
  if (!readiness) return [];
  return sentencesOfReadiness(readiness, standsOf(reading)).map((sentence) => say(sentence, child.name));
}

function standsOf(reading: ChildReading): ClockStands {
  return clockStands(reading.clockEffect, reading.trial, isRushed(reading));
}

/** Whether the clock may be proposed for an accurate set: where moving on is not, and nothing speaks against the clock. */
export function mayProposeClock(reading: ChildReading): boolean {
  const { costs, isRushed: rushes, isDrawn } = standsOf(reading);
  return !reading.readiness?.isReady && costs === null && !rushes && !isDrawn;
}

/**
 * Where days with the clock go worse than days without. Nothing during a trial, which decides about the clock by itself;
 * nor beside a sheet that was rushed, which would be another cause for the same; nor where moving on is proposed, which
 * takes the clock away and says so.
 */
export function saidOfClockCost(reading: ChildReading, sheet: Id | null): readonly Said[] {
  const { clockEffect, readiness, child } = reading;
  if (sheet !== null && has(reading, sheet, 'rushed')) return [];
  const { costs, isDrawn } = standsOf(reading);
  if (costs === null || isDrawn || readiness?.isReady) return [];
  return sentencesOfClock(clockEffect).map((sentence) => say(sentence, child.name));
}

/** Before the first sheet with the clock of a set that is not accurate yet; else nothing. */
export function saidOfClockTooSoon(reading: ChildReading): Said | null {
  const { readiness, log, child } = reading;
  if (!readiness || readiness.isAccurate || standsOf(reading).isDrawn) return null;
  const wasTimed = log.sats.some(
    ({ ruled: { sat } }) => sat.purpose === 'sheet' && sat.clock !== null && sat.set === readiness.set,
  );
  const { lastRight, lastOf } = readiness;
  return wasTimed ? null : say({ kind: 'timedTooSoon', lastRight, lastOf }, child.name);
}

/** What the keys allow: that a band is out of reach of these hands, or that they were never measured. */
export function saidOfKeypad(reading: ChildReading): Said | null {
  return sayKeypad(reading, keypadNow(reading));
}

/** More seconds, where the keys put a band out of reach; `said` is `null` where the sheet's own sentence tells it. */
export interface MoreTime {
  readonly said: Said | null;
  readonly restoringS: number | null;
}

/**
 * More seconds for slow keys. Nothing beside advice to leave the clock off, or to move on, which takes it away; nor
 * during a trial.
 */
export function moreTime(reading: ChildReading, sheet: Id | null): MoreTime | null {
  const fairness = keypadNow(reading);
  if (!fairness || fairness.outOfReach.length === 0) return null;
  const { readiness } = reading;
  const isOff = readiness !== null && (readiness.isReady || !readiness.isAccurate);
  if (isOff || standsOf(reading).isDrawn || saidOfClockCost(reading, sheet).length > 0) return null;
  const verdicts = sheet === null ? [] : (reading.sitting(sheet)?.verdicts ?? []);
  if (verdicts.some(({ name }) => name === 'rushed')) return null;
  const slow = verdicts.find((verdict) => verdict.name === 'slowHands');
  if (slow) return { said: null, restoringS: slow.restoringS };
  return { said: sayKeypad(reading, fairness), restoringS: fairness.restoringS };
}

function sayKeypad({ child }: ChildReading, fairness: Fairness | null): Said | null {
  const sentence = sentenceOfKeypad(fairness, child.settings.allowanceS * 1000);
  return sentence && say(sentence, child.name);
}
