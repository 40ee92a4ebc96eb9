import type { FactId } from '../../core/fact/fact';
import type { ChildHistory, RuledSat } from '../../core/household/history';
import type { Child } from '../../core/household/household';
import { markSat } from '../../core/marking/mark-sat';
import type { Marked } from '../../core/marking/marked';
import type { Purpose } from '../../core/record/sat';
import type { Id } from '../../core/record/stamp';
import type { HandTime } from '../hand-time/hand-time';
import type { Answer } from './answer';
import { answersOf } from './answers-of';
import { type HandsThen, handsOverTime } from './hands-over-time';

/** One sitting, marked and read; voided ones and those that are not the child's own work are kept but say nothing. */
export interface ReadSat {
  readonly ruled: RuledSat;
  readonly marked: Marked;
  /** Whether it says anything of the child. */
  readonly counts: boolean;
  /** In the order of the places; empty for mending and practice, and where the sitting does not count. */
  readonly answers: readonly Answer[];
}

/** A set as the readings need it. */
export interface ReadSet {
  readonly id: Id;
  readonly facts: ReadonlySet<FactId>;
}

/** All sittings of one child, read once; every other reading starts from it. */
export interface ChildLog {
  readonly child: Child;
  readonly current: ReadSet | null;
  /** Sets moved on from, in the order they were kept. */
  readonly kept: readonly ReadSet[];
  /** Oldest first. */
  readonly sats: readonly ReadSat[];
  /** Extra rows by the sheet they belong to. */
  readonly rowsOf: ReadonlyMap<Id, readonly ReadSat[]>;
  handsThen: HandsThen;
}

/** Marks and reads a child's sittings, once. */
export function readChildLog(...of: Parameters<typeof stepsOfChildLog>): ChildLog {
  const steps = stepsOfChildLog(...of);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Sittings read in one step: about a millisecond's work. */
const satsAStep = 25;

/** The same in steps, between which other work may be done. */
export function* stepsOfChildLog(
  child: Child,
  history: ChildHistory,
  factsOfSet: (set: Id) => readonly FactId[] | null,
): Generator<undefined, ChildLog, undefined> {
  const handsThen = handsOverTime(history.sittings.map(({ sat }) => sat));
  const sats: ReadSat[] = [];
  for (const ruled of history.sittings) {
    if (sats.length % satsAStep === 0) yield;
    sats.push(readSat(ruled, child, handsThen));
  }
  const rowsOf = new Map<Id, ReadSat[]>();
  for (const read of sats) {
    const { purpose, of } = read.ruled.sat;
    if (purpose !== 'row' || of === null || !read.counts) continue;
    const rows = rowsOf.get(of);
    if (rows) rows.push(read);
    else rowsOf.set(of, [read]);
  }
  const setOf = (id: Id): readonly ReadSet[] => {
    const facts = factsOfSet(id);
    return facts ? [{ id, facts: new Set(facts) }] : [];
  };
  return {
    child,
    current: (child.currentSet === null ? null : setOf(child.currentSet)[0]) ?? null,
    kept: child.keptSets.flatMap(setOf),
    sats,
    rowsOf,
    handsThen,
  };
}

/** What is answered without help: the summary counts the same. */
const ownPurposes: ReadonlySet<Purpose> = new Set<Purpose>(['sheet', 'row', 'firstTry']);

function readSat(ruled: RuledSat, { settings }: Child, handsThen: HandsThen): ReadSat {
  const { sat, rulings } = ruled;
  const marked = markSat(sat, rulings, settings.limits);
  const counts = !rulings.voided && !rulings.notOwnWork;
  const isOwn = ownPurposes.has(sat.purpose);
  const hand = (device: Id, via: HandTime['via']) => handsThen(device, via, sat.day);
  return { ruled, marked, counts, answers: counts && isOwn ? answersOf(sat, marked, hand) : [] };
}
