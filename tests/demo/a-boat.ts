import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, type History, noHistory, type RuledSat } from '../../src/core/household/history';
import type { Household } from '../../src/core/household/household';
import { markSat } from '../../src/core/marking/mark-sat';
import type { Marked, MarkedPlace } from '../../src/core/marking/marked';
import type { HouseholdRecord } from '../../src/core/record/household-record';
import { type HistoryRecord, isOfHistory, type LogRecord } from '../../src/core/record/record';
import type { Purpose, Sat } from '../../src/core/record/sat';
import { defaultChildSettings } from '../../src/core/record/settings';
import type { CrewMember } from '../../src/demo/crew';
import { makeBoat } from '../../src/demo/make-boat';

export const today = '2026-11-25';

/** Several boats, so that no fact is one seed's luck. */
export const boats = [1, 2, 3, 4, 5, 6].map((seed) => makeBoat(today, seed));
export const [boat = makeBoat(today, 1)] = boats;

export function isHistory(record: LogRecord): record is HistoryRecord {
  return isOfHistory(record);
}

export function isHome(record: LogRecord): record is HouseholdRecord {
  return !isHistory(record);
}

export function satsOf(records: readonly LogRecord[], member?: CrewMember): readonly Sat[] {
  return records.filter((one): one is Sat => one.kind === 'sat' && (!member || one.child === member.id));
}

export interface Read {
  readonly household: Household;
  readonly history: History;
  /** A child's sittings in force, marked. */
  marked(member: CrewMember, ...purposes: readonly Purpose[]): readonly MarkedSat[];
}

export interface MarkedSat extends RuledSat {
  readonly marked: Marked;
}

/** A boat's log read as the app reads it. */
export function readBoat(records: readonly LogRecord[]): Read {
  const household = foldHousehold(records.filter(isHome));
  const history = effectiveHistory(records.filter(isHistory), household);
  return {
    household,
    history,
    marked: (member, ...purposes) =>
      (history.children.get(member.id) ?? noHistory).sittings
        .filter(({ sat, rulings }) => purposes.includes(sat.purpose) && !rulings.voided)
        .map((ruled) => ({
          ...ruled,
          marked: markSat(ruled.sat, ruled.rulings, defaultChildSettings.limits),
        })),
  };
}

export function placesOf(sats: readonly MarkedSat[]): readonly MarkedPlace[] {
  return sats.flatMap(({ marked }) => marked.places);
}

/** Answers given by the child itself, with the time to the first key; `outcome` right or wrong. */
export function answered(sats: readonly MarkedSat[], outcome: 'right' | 'wrong'): readonly number[] {
  return placesOf(sats).flatMap((place) =>
    place.outcome === outcome && place.firstKeyMs !== null && !place.shown ? [place.firstKeyMs] : [],
  );
}

/** Share right of all answered. */
export function accuracy(sats: readonly MarkedSat[]): number {
  const given = placesOf(sats).filter(({ outcome }) => outcome === 'right' || outcome === 'wrong');
  return given.filter(({ outcome }) => outcome === 'right').length / given.length;
}
