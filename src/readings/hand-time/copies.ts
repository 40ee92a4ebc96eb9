import { type PromptId, parsePrompt } from '../../core/fact/prompt';
import type { Sat, Via, Visit } from '../../core/record/sat';
import type { Id } from '../../core/record/stamp';
import { isRight } from '../../core/sitting/answer';
import { digitGaps, isDigit, ownKeys } from './digit-gaps';

/** One number copied right, without a slip on the way. Times in ms. */
export interface Copy {
  readonly device: Id;
  readonly via: Via;
  readonly digits: number;
  readonly firstKeyMs: number;
  readonly gapsMs: readonly number[];
  /** From the last digit to the done key; `null` where the answer took itself. */
  readonly doneMs: number | null;
  /** From the answer to the next card's onset; `null` after the last card or a break. */
  readonly turnMs: number | null;
}

/** How many answers at the start of a round are left out: the hands are still finding the keys. */
export const copiesDropped = 3;

/** What a round of numbers to copy says of the hands, its first three answers left out. Other sittings say nothing. */
export function copiesOf(sat: Sat): readonly Copy[] {
  if (sat.purpose !== 'practice') return [];
  const taken = sat.visits.flatMap((visit, index) =>
    visit.end === 'taken' && isCopy(sat.prompts[visit.place]) ? [index] : [],
  );
  return taken.slice(copiesDropped).flatMap((index) => copyOf(sat, index) ?? []);
}

function copyOf(sat: Sat, index: number): Copy | null {
  const visit = sat.visits[index];
  if (!visit || visit.from !== undefined || visit.shown || visit.onsetMs === null) return null;
  if (!isRight(sat.prompts[visit.place], visit.given)) return null;
  const keys = ownKeys(visit);
  const digits = keys.filter(isDigit);
  const [first] = digits;
  const last = digits.at(-1);
  const isClean =
    digits.length === visit.given?.length && keys.length - digits.length === (visit.took === 'done' ? 1 : 0);
  if (!isClean || !first || !last || first[1] === null || last[1] === null) return null;
  if (keys.some(([, , via]) => via !== first[2])) return null;
  return {
    device: sat.device,
    via: first[2],
    digits: digits.length,
    firstKeyMs: first[1] - visit.onsetMs,
    gapsMs: digitGaps(visit),
    doneMs: visit.took === 'done' && visit.endMs !== null ? visit.endMs - last[1] : null,
    turnMs: turnAfter(sat, index, visit),
  };
}

function turnAfter({ visits, away }: Sat, index: number, { endMs }: Visit): number | null {
  const next = visits[index + 1]?.onsetMs ?? null;
  const isBroken = away.some(({ afterVisits }) => afterVisits === index + 1);
  return endMs === null || next === null || isBroken ? null : next - endMs;
}

function isCopy(prompt: PromptId | undefined): boolean {
  return prompt !== undefined && parsePrompt(prompt)?.kind === 'copy';
}
