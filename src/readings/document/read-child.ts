import { bandInFirst } from '../../core/marking/band-in-first';
import type { ChildLog, ReadSat } from '../child-log/child-log';
import { readTrial } from '../clock-trial/read-trial';
import { answerFlags } from '../errors/answer-flags';
import { liftsOf } from '../errors/lift';
import { readError } from '../errors/read-error';
import type { PlacedError } from '../errors/wrong-answers-of';
import { wrongOnSheets } from '../errors/wrong-on-sheets';
import { readFacts } from '../facts/read-facts';
import { handTimes } from '../hand-time/hand-time';
import { readReadiness } from '../move-on/read-readiness';
import { readClockEffect } from '../over-time/read-clock-effect';
import { readRates } from '../over-time/read-rates';
import { sentenceOfFact } from '../sentences/of-facts';
import { sentencesOfSheet } from '../sentences/of-sheet';
import { clockStands, sentenceOfTrial, sentencesOfClock, sentencesOfReadiness } from '../sentences/of-time';
import { say } from '../sentences/say';
import { readSittings } from '../sitting-verdict/read-sittings';
import type { SittingReading } from '../sitting-verdict/sitting-reading';
import type {
  DocumentCause,
  DocumentChild,
  DocumentHand,
  DocumentSitting,
  DocumentStretch,
} from './document';

/** Every reading of one child. */
export function readChild(log: ChildLog): DocumentChild {
  const { child, current, sats } = log;
  const facts = readFacts(log);
  const clockEffect = readClockEffect(log);
  const trial = readTrial(log);
  const readiness = readReadiness(log, facts);
  const wrong = wrongOnSheets(log);
  const read = readSittings(log);
  const byId = new Map(sats.map((one) => [one.ruled.sat.id, one]));
  return {
    child: child.id,
    name: child.name,
    set: current?.id ?? null,
    facts: [...facts.values()].map((reading) => ({
      ...reading,
      fact: reading.fact.id,
      said: say(sentenceOfFact(reading), child.name),
    })),
    sittings: read.sittings.map((reading) => sittingOf(log, reading, byId.get(reading.sitting), wrong)),
    flustered: read.flustered,
    clockEffect: { ...clockEffect, said: sentencesOfClock(clockEffect).map((one) => say(one, child.name)) },
    trial: trial && { ...trial, said: say(sentenceOfTrial(trial), child.name) },
    readiness: readiness && {
      ...readiness,
      said: sentencesOfReadiness(readiness, clockStands(clockEffect, trial, isRushed(read.sittings))).map(
        (one) => say(one, child.name),
      ),
    },
    rates: stretchesOf(log),
    hands: handsOf(log),
    errors: liftsIn([...wrong.values()].flat()),
  };
}

/** Whether the last sheet with the clock was rushed. */
function isRushed(sittings: readonly SittingReading[]): boolean {
  const last = sittings.findLast(({ timed, verdicts }) => timed && verdicts.length > 0);
  return last?.verdicts.some(({ name }) => name === 'rushed') ?? false;
}

type WrongBySheet = ReadonlyMap<string, readonly PlacedError[]>;

function sittingOf(
  { child }: ChildLog,
  reading: SittingReading,
  read: ReadSat | undefined,
  wrong: WrongBySheet,
): DocumentSitting {
  const said = sentencesOfSheet(reading).map((one) => say(one, child.name));
  const allowanceMs = child.settings.allowanceS * 1000;
  return {
    ...reading,
    causes: (wrong.get(reading.sitting) ?? []).map((one) => causeOf(one, read)),
    sentence: said.map(({ text }) => text).join(' '),
    said,
    bandInFirst: read && !reading.timed ? bandInFirst(read.marked, allowanceMs) : null,
  };
}

function causeOf(wrong: PlacedError, read: ReadSat | undefined): DocumentCause {
  const { name, flags } = readError(wrong);
  const slip = read?.ruled.rulings.slips.get(wrong.place) ?? null;
  return {
    place: wrong.place,
    fact: wrong.fact.id,
    given: wrong.given,
    cause: name,
    flags: [...flags],
    slip,
  };
}

function stretchesOf(log: ChildLog): readonly DocumentStretch[] {
  return readRates(log).flatMap(({ rate, withClock, stretches }) =>
    stretches.flatMap(({ points, changed, line, noLine }) => {
      const [first, last] = [points[0], points.at(-1)];
      if (!first || !last) return [];
      return [
        {
          rate,
          withClock,
          conditions: first.conditions,
          from: first.day,
          to: last.day,
          sittings: points.length,
          changed,
          line,
          noLine,
        },
      ];
    }),
  );
}

function handsOf({ sats }: ChildLog): readonly DocumentHand[] {
  const counted = sats.filter(({ counts }) => counts).map(({ ruled }) => ruled.sat);
  return handTimes(counted).map((hand) => ({ ...hand, byDigits: Object.fromEntries(hand.byDigits) }));
}

function liftsIn(wrong: readonly PlacedError[]): DocumentChild['errors'] {
  return liftsOf(answerFlags, wrong).filter(({ hits }) => hits > 0);
}
