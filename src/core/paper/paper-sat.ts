import type { Sat, SittingEnd, SittingPlan, SittingStart, Visit } from '../record/sat';
import type { Stamp } from '../record/stamp';
import { answerOf } from '../sitting/answer';

/** How a place came out on paper; `given`: the number written, `null` where nobody typed it in. */
export type PaperMark =
  | { readonly is: 'right' }
  | { readonly is: 'wrong'; readonly given: string | null }
  | { readonly is: 'blank' };

/** What a parent reads off a sheet: how many places were come to, by the bell if there was one, and each one's mark. */
export interface PaperResult {
  readonly reached: number;
  /** Places not named are right. */
  readonly marks: ReadonlyMap<number, PaperMark>;
}

/** Where and when something was done on paper: its day, and no time at all. */
export type PaperStart = Pick<SittingStart, 'day' | 'offsetMin' | 'zone' | 'startedAt'>;

/**
 * A sitting done on paper, for the log to stamp: marked, banded and counted like any other, without a time in it. What
 * comes after the bell is not reached; an untimed sheet broken off is no finished one.
 */
export function paperSat(plan: SittingPlan, result: PaperResult, start: PaperStart): Omit<Sat, keyof Stamp> {
  const reached = Math.min(Math.max(0, result.reached), plan.prompts.length);
  return {
    ...plan,
    ...start,
    paper: true,
    takesItself: false,
    keepTimes: false,
    clockStepMs: 0,
    isolated: false,
    kind: 'sat',
    visits: plan.prompts.slice(0, reached).map((prompt, place) => {
      const mark = result.marks.get(place) ?? { is: 'right' };
      return visitOf(place, mark.is === 'right' ? String(answerOf(prompt)) : mark);
    }),
    away: [],
    ended: endOf(plan, reached),
    endedMs: null,
  };
}

function visitOf(place: number, mark: string | Exclude<PaperMark, { is: 'right' }>): Visit {
  const isBlank = typeof mark !== 'string' && mark.is === 'blank';
  return {
    place,
    onsetMs: null,
    onsetBy: 'paper',
    keys: [],
    end: isBlank ? 'skipped' : 'taken',
    endMs: null,
    given: typeof mark === 'string' ? mark : mark.is === 'wrong' ? mark.given : null,
    took: null,
  };
}

function endOf({ prompts, clock }: SittingPlan, reached: number): SittingEnd {
  if (reached === prompts.length) return 'finished';
  return clock ? 'bell' : 'enough';
}
