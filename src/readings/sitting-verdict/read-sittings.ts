import type { Marked, MarkedPlace } from '../../core/marking/marked';
import type { Id } from '../../core/record/stamp';
import { thinkOf } from '../child-log/answer';
import type { ChildLog, ReadSat } from '../child-log/child-log';
import { gapsInside, pausesInside } from '../hand-time/hand-time';
import { median } from '../statistics/robust-spread';
import { ClockWatch } from './clock-watch';
import { isHurry, judge } from './judge';
import { Past } from './past';
import { rushed } from './rushed';
import { type Sheet, sheetOf } from './sheet';
import type { RowsAfter, SittingReading } from './sitting-reading';
import type { Flustered } from './verdict';

/** How many sheets of the same kind just before are looked at for hurry. */
const lastSheets = 8;

/** Every sheet of a child, and what stands of the clock after the last. */
export interface Sittings {
  /** Oldest first, each read by what came before it and never by what came after. */
  readonly sittings: readonly SittingReading[];
  /** What the last look at days with and without the clock found: whether the child is called flustered now. */
  readonly flustered: Flustered | null;
}

/** Reads every sheet of a child. */
export function readSittings(log: ChildLog): Sittings {
  const walking = { watch: new ClockWatch(), timed: [], untimed: [] };
  const sittings = [...walk(log, walking, () => true)];
  const standing = walking.watch.standing();
  return { sittings, flustered: standing && isHurry(standing, walking.timed) ? null : standing };
}

/** One sheet; `null` where the child has none of that id. */
export function readSitting(log: ChildLog, sitting: Id): SittingReading | null {
  return (
    walk(log, { watch: new ClockWatch(), timed: [], untimed: [] }, ({ id }) => id === sitting).next().value ??
    null
  );
}

/** What is carried from sheet to sheet: the looks at the clock, and the last sheets of each kind. */
interface Walking {
  readonly watch: ClockWatch;
  readonly timed: ReadSat[];
  readonly untimed: ReadSat[];
}

function* walk(
  log: ChildLog,
  { watch, timed, untimed }: Walking,
  isWanted: (sat: ReadSat['ruled']['sat']) => boolean,
): Generator<SittingReading, undefined> {
  const past = new Past();
  for (const read of log.sats) {
    const { sat } = read.ruled;
    // A first try is no sheet, but a day on which its facts were met, without help.
    if (sat.purpose === 'firstTry') past.add(read.answers);
    if (sat.purpose !== 'sheet') continue;
    const kind = sat.clock ? timed : untimed;
    const sheet = sheetOf(log, read, past);
    const hurry = rushed(sheet, kind);
    // Much quicker and wronger than usual from end to end, or unread: perhaps not this child, so nothing of the clock.
    const isStrange = hurry !== null && hurry.by !== 'wrongQuicker';
    const flustered = isStrange ? watch.standing() : watch.add(read);
    if (isWanted(sat)) {
      const before = { hurry, flustered, isEarly: watch.isEarly(), last: kind };
      yield readingOf(sheet, read.counts ? judge(sheet, before) : []);
    }
    past.add(read.answers);
    if (read.counts && !isStrange && !sat.lookBack) kind.push(read);
    if (kind.length >= lastSheets) kind.shift();
  }
  return undefined;
}

function readingOf(sheet: Sheet, verdicts: SittingReading['verdicts']): SittingReading {
  const { log, read, sat, thinkMs } = sheet;
  const { marked } = read;
  return {
    sitting: sat.id,
    day: sat.day,
    timed: sat.clock !== null,
    drawn: sat.trial !== undefined,
    lookBack: sat.lookBack ?? false,
    length: marked.places.length,
    right: marked.right,
    rightByBell: marked.rightByBell,
    reached: marked.reached,
    wrong: marked.wrong,
    ...ruledIn(marked, sat.clock !== null),
    skipped: marked.skipped,
    band: marked.band,
    noBand: marked.noBand,
    thinkS: seconds(thinkMs),
    rows: rowsAfter(log, sat.id),
    ...gapsOf(sheet),
    verdicts,
  };
}

function ruledIn({ places }: Marked, timed: boolean): Pick<SittingReading, 'accepted' | 'slips'> {
  const isCounted = ({ outcome, byBell }: MarkedPlace) => outcome === 'right' && (byBell || !timed);
  return {
    accepted: places.filter((place) => place.accepted && isCounted(place)).length,
    slips: places.filter(({ outcome, slip }) => outcome === 'wrong' && slip === true).length,
  };
}

function rowsAfter({ rowsOf }: ChildLog, sheet: Id): RowsAfter | null {
  const answers = (rowsOf.get(sheet) ?? []).flatMap((row) => row.answers);
  if (answers.length === 0) return null;
  const right = answers.filter(({ outcome }) => outcome === 'right');
  return {
    answers: answers.length,
    right: right.length,
    thinkS: seconds(median(right.flatMap((answer) => thinkOf(answer) ?? []))),
  };
}

/** Gaps inside answers, and those that are longer than these hands ever need when they only copy. */
function gapsOf({ sat, hand }: Sheet): Pick<SittingReading, 'pausesInside' | 'gapsInside'> {
  if (!hand?.isEnough) return { pausesInside: null, gapsInside: null };
  const taken = sat.visits.filter(({ end }) => end === 'taken');
  return {
    pausesInside: taken.reduce((sum, visit) => sum + pausesInside(visit, hand), 0),
    gapsInside: taken.reduce((sum, visit) => sum + gapsInside(visit), 0),
  };
}

function seconds(ms: number | null): number | null {
  return ms === null ? null : ms / 1000;
}
