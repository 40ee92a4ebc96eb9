import { type Signal, signal } from '@preact/signals';
import { codeOf } from '../../core/paper/paper-code';
import type { Day, Id } from '../../core/record/stamp';
import type { FoundSheet } from './find-sheet';
import type { Marks } from './marks';
import type { SheetOnPaper } from './plan-prints';
import type { PaperPart } from './words';

/** Which part of the page is open, sheets to be printed once more, and the one being entered; kept outside the page, like the place. */
export const paperPlace = signal<{
  readonly part: PaperPart;
  readonly again: readonly SheetOnPaper[] | null;
  readonly entering: FoundSheet | null;
}>({ part: 'result', again: null, entering: null });

/** Turns to a part of the page. */
export function turnToPart(part: PaperPart, to: Partial<Omit<typeof paperPlace.value, 'part'>> = {}): void {
  paperPlace.value = { part, again: null, entering: null, ...to };
}

/** A result half read off: whose, of which day, with the clock or without it, and its marks. */
export interface HeldResult {
  readonly whose: Signal<Id>;
  readonly day: Signal<Day>;
  readonly isTimed: Signal<boolean>;
  readonly marks: Signal<Marks>;
}

const held = new Map<string, HeldResult>();

/** What was read off a sheet so far: locking loses nothing of it. */
export function heldResult(sheet: SheetOnPaper, first: () => HeldResult): HeldResult {
  const key = codeOf(sheet);
  const known = held.get(key);
  if (known) return known;
  const made = first();
  held.set(key, made);
  return made;
}

/** Forgets it once it is kept or given up. */
export function dropResult(sheet: SheetOnPaper): void {
  held.delete(codeOf(sheet));
}
