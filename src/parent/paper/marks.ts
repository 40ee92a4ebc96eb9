import type { PromptId } from '../../core/fact/prompt';
import type { PaperMark, PaperResult } from '../../core/paper/paper-sat';
import { entryCap, isRight } from '../../core/sitting/answer';

/** A result being read off a sheet: `reached` is `null` until the parent has said how far the child came. */
export interface Marks {
  readonly reached: number | null;
  readonly marks: ReadonlyMap<number, PaperMark>;
}

/** A sheet of which nothing is said yet; without a bell all of it was done. */
export function noMarks(prompts: readonly PromptId[], hasBell: boolean): Marks {
  return { reached: hasBell ? null : prompts.length, marks: new Map() };
}

/** What a tap on a place does: first it says how far the child came, then right, wrong and blank take turns. */
export function tapped(state: Marks, place: number): Marks {
  if (state.reached === null) return { ...state, reached: place + 1 };
  if (place >= state.reached) return state;
  const { is } = state.marks.get(place) ?? { is: 'right' };
  return withMark(
    state,
    place,
    is === 'right' ? { is: 'wrong', given: null } : is === 'wrong' ? { is: 'blank' } : null,
  );
}

/** A digit of what was written in a place, typed behind those before it; a number that is right is right. */
export function typed(state: Marks, prompts: readonly PromptId[], place: number, digit: string): Marks {
  return written(state, prompts, place, `${writtenIn(state, place)}${digit}`.slice(0, entryCap));
}

/** The last digit typed taken away. */
export function erased(state: Marks, prompts: readonly PromptId[], place: number): Marks {
  return written(state, prompts, place, writtenIn(state, place).slice(0, -1));
}

/** What was written in a place, as far as it was typed in. */
export function written(state: Marks, prompts: readonly PromptId[], place: number, digits: string): Marks {
  if (state.reached === null || place >= state.reached) return state;
  if (isRight(prompts[place], digits)) return withMark(state, place, null);
  return withMark(state, place, { is: 'wrong', given: digits === '' ? null : digits });
}

/** The digits typed in for a place. */
export function writtenIn({ marks }: Marks, place: number): string {
  const mark = marks.get(place);
  return mark?.is === 'wrong' ? (mark.given ?? '') : '';
}

/** How far the child came, said anew; what was marked behind it is forgotten. */
export function reachedTo({ marks }: Marks, reached: number | null): Marks {
  const kept = [...marks].filter(([place]) => reached === null || place < reached);
  return { reached, marks: new Map(kept) };
}

/** The result once it is whole. */
export function resultOf({ reached, marks }: Marks): PaperResult | null {
  return reached === null ? null : { reached, marks };
}

function withMark(state: Marks, place: number, mark: PaperMark | null): Marks {
  const marks = new Map(state.marks);
  if (mark) marks.set(place, mark);
  else marks.delete(place);
  return { ...state, marks };
}
