import type { ReadSat } from '../child-log/child-log';
import { median } from '../statistics/robust-spread';
import { checking } from './checking';
import { newness, notKnown } from './not-known';
import { wrongQuicker } from './rushed';
import type { Sheet } from './sheet';
import { slowHands } from './slow-hands';
import { type Flustered, mayStandTogether, type Rushed, type Verdict } from './verdict';

/** What the sheets before leave to judge this one by. */
export interface Before {
  readonly hurry: Rushed | null;
  /** What the last look at the clock found. */
  readonly flustered: Flustered | null;
  readonly isEarly: boolean;
  /** The last sheets of the same kind, the newest last. */
  readonly last: readonly ReadSat[];
}

/** Over the last sheets with the clock, wrong answers this much quicker than by chance explain what they cost. */
const hurryAlpha = 0.01;

/** The verdicts of one sheet; where two would contradict each other the one found first stands. */
export function judge(sheet: Sheet, before: Before): readonly Verdict[] {
  const { marked, ruled } = sheet.read;
  if (marked.interrupted && ruled.sat.clock && !ruled.rulings.bandAnyway) return cannotTell('interrupted');
  const found: readonly Verdict[] = [
    before.hurry,
    flusteredBy(sheet, before),
    // The other causes answer the question of a low count, checking also that of a slow sheet without the clock.
    ...(sheet.isShort || sheet.sat.clock === null ? [checking(sheet)] : []),
    ...(sheet.isShort ? [newness(sheet), notKnown(sheet), slowHands(sheet)] : []),
  ].flatMap((verdict) => verdict ?? []);
  const standing = found.filter((verdict, index) =>
    found.slice(0, index).every(({ name }) => mayStandTogether(name, verdict.name)),
  );
  if (standing.length > 0) return standing;
  if (!sheet.isShort) return [{ name: 'fine' }];
  if (!ruled.sat.keepTimes) return cannotTell('noTimes');
  return cannotTell(before.isEarly ? 'tooFew' : 'nothingStandsOut');
}

function cannotTell(why: Extract<Verdict, { name: 'cannotTell' }>['why']): readonly Verdict[] {
  return [{ name: 'cannotTell', why }];
}

/** What the look found, where this sheet is one with the clock and has something of it. */
function flusteredBy(sheet: Sheet, { flustered, last }: Before): Flustered | null {
  const { sat, read, isShort } = sheet;
  if (!flustered || sat.clock === null || isHurry(flustered, last)) return null;
  const isSeen = isShort || isSlower(sheet) || read.marked.wrong + read.marked.skipped > 0;
  return isSeen ? flustered : null;
}

/**
 * Whether hurry over the last sheets with the clock explains what was found: wrong in a hurry is another cause than
 * wrong in spite of taking one's time.
 */
export function isHurry({ by }: Flustered, last: readonly ReadSat[]): boolean {
  return by === 'lessRight' && wrongQuicker(last) <= hurryAlpha;
}

/** Whether half the facts took longer than they last did without the clock. */
function isSlower({ read, past }: Sheet): boolean {
  const shifts = read.answers.flatMap(({ fact, firstKeyMs }) => {
    const usualMs = past.of(fact.id).answers.findLast((one) => !one.withClock)?.firstKeyMs ?? null;
    return firstKeyMs === null || usualMs === null ? [] : [Math.log(firstKeyMs / usualMs)];
  });
  return (median(shifts) ?? 0) > 0;
}
