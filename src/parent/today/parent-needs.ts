import { parseFact } from '../../core/fact/fact';
import type { RuledSat } from '../../core/household/history';
import type { Child } from '../../core/household/household';
import type { Marked } from '../../core/marking/marked';
import type { ChildDay } from '../../core/plan/plan-day';
import type { SheetDay } from '../../core/plan/sheet-day';
import type { Need } from '../../core/plan/step';
import type { Id } from '../../core/record/stamp';
import { causeText, looksLikeSlip } from '../marking/cause-words';
import { promptText } from '../marking/words';
import { causesOf } from '../reading/causes';

/** A wrong answer of today that looks like a slip of the hand, on which nobody has ruled. */
export interface DoubtfulSlip {
  readonly sat: RuledSat['sat'];
  readonly place: number;
  readonly fact: string;
  readonly given: string;
  readonly looksLike: string;
}

/** What waits for the parent: what the plan tells, and what the readings doubt, on a sheet and its rows. */
export type ParentNeed =
  | Need
  | { readonly what: 'doubtfulSlip'; readonly sitting: Id; readonly slips: readonly DoubtfulSlip[] };

/** A need that hangs on one sheet. */
export type SheetNeed = Extract<ParentNeed, { readonly sitting: Id }>;

/** All that waits for the parent on a child's day; the day never waits for it. */
export function needsOfParent(child: Child, { needs, sheets }: ChildDay): readonly ParentNeed[] {
  const doubts = sheets.flatMap((sheet): ParentNeed[] => {
    const slips = doubtfulSlips(child, sheet);
    return slips.length > 0 ? [{ what: 'doubtfulSlip', sitting: sheet.ruled.sat.id, slips }] : [];
  });
  return [...needs, ...doubts];
}

function doubtfulSlips(child: Child, { ruled, marked, parts, later }: SheetDay): readonly DoubtfulSlip[] {
  const onRows = parts.flatMap((part, index) => {
    const own = later[index];
    return own && part.sat.purpose === 'row' ? slipsIn(child, part, own) : [];
  });
  return [...slipsIn(child, ruled, marked), ...onRows];
}

function slipsIn(child: Child, ruled: RuledSat, { places }: Marked): readonly DoubtfulSlip[] {
  if (!places.some(({ outcome }) => outcome === 'wrong')) return [];
  const causes = causesOf({ child }, ruled);
  return places.flatMap(({ place, prompt, outcome, slip, given }) => {
    const cause = causes.get(place);
    const fact = parseFact(prompt);
    if (outcome !== 'wrong' || slip !== null || given === null || !cause || !fact) return [];
    if (!looksLikeSlip(cause.read)) return [];
    const looksLike = causeText(fact, given, cause.read);
    return [{ sat: ruled.sat, place, fact: promptText(prompt), given, looksLike }];
  });
}
