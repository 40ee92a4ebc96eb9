import type { Ruling } from '../core/record/household-record';
import type { Draft } from '../core/record/record';
import type { Sat } from '../core/record/sat';
import { isRight } from '../core/sitting/answer';
import type { BoatLog } from './boat-log';
import type { CrewMember } from './crew';
import { teo } from './teo';
import { wren } from './wren';

/** A ruling that the parent makes once, on the first sheet from a day on that calls for it. */
interface PlannedRuling {
  readonly child: CrewMember;
  readonly fromDay: number;
  /** `null` where the sheet does not call for it. */
  readonly on: (sheet: Sat) => Ruling | null;
  /** Thought better of a minute later. */
  readonly undone?: true;
}

const firstWrong = (sheet: Sat): number | null =>
  sheet.visits.find(({ place, end, given }) => end === 'taken' && !isRight(sheet.prompts[place], given))
    ?.place ?? null;

const onWrong = (rule: (place: number) => Ruling) => (sheet: Sat) => {
  const place = firstWrong(sheet);
  return place === null ? null : rule(place);
};

const planned: readonly PlannedRuling[] = [
  { child: teo, fromDay: 6, on: onWrong((place) => ({ what: 'slip', place, slip: true })) },
  { child: teo, fromDay: 9, on: onWrong((place) => ({ what: 'slip', place, slip: false })) },
  // He had said it right aloud before he keyed it.
  { child: teo, fromDay: 15, on: onWrong((place) => ({ what: 'accept', place })) },
  { child: wren, fromDay: 20, on: () => ({ what: 'notOwnWork' }), undone: true },
  { child: teo, fromDay: 23, on: onWrong((place) => ({ what: 'slip', place, slip: true })) },
];

/** Makes the rulings, each at its time; `atMs` is when the child was through. */
export type Rule = (log: BoatLog, member: CrewMember, day: number, sheet: Sat, atMs: number) => void;

const markingMs = 240_000;
const secondThoughtMs = 60_000;

export function createRule(): Rule {
  const open = new Set(planned);
  return (log, member, day, sheet, atMs) => {
    for (const one of open) {
      const ruling = one.child === member && day >= one.fromDay ? one.on(sheet) : null;
      if (!ruling) continue;
      open.delete(one);
      const { id } = log.add(ruledOn(sheet, ruling), atMs + markingMs);
      if (one.undone) log.add({ kind: 'undone', target: id }, atMs + markingMs + secondThoughtMs);
      return;
    }
  };
}

/** A ruling on a sitting as a draft. */
export function ruledOn({ id, child, day }: Sat, ruling: Ruling): Draft {
  return { kind: 'ruled', child, target: id, targetDay: day, ruling };
}
