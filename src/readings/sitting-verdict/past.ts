import type { FactId } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';
import { type Answer, thinkOf } from '../child-log/answer';
import { quickMs } from '../facts/pace';

/** What is known of a fact before the sheet in hand. */
export interface FactPast {
  /** Days on which it was met, and those on which the day's first answer was right. */
  readonly days: number;
  readonly rightDays: number;
  /** The newest, oldest first. */
  readonly answers: readonly Answer[];
}

const kept = 24;

/** How far back, in days, an earlier answer is set beside today's. */
export const nearDays = 28;

interface Growing {
  days: number;
  rightDays: number;
  lastDay: Day | null;
  answers: Answer[];
}

/** What came before, growing sheet by sheet. Left out are extra rows, which can only look better, and slips of the keys. */
export class Past {
  readonly #facts = new Map<FactId, Growing>();

  of(fact: FactId): FactPast {
    return this.#facts.get(fact) ?? nothing;
  }

  add(answers: readonly Answer[]): void {
    for (const answer of answers) {
      const { fact, day, outcome, onRow, slip } = answer;
      if (onRow || slip === true) continue;
      const right = outcome === 'right';
      let own = this.#facts.get(fact.id);
      if (!own) {
        own = { days: 0, rightDays: 0, lastDay: null, answers: [] };
        this.#facts.set(fact.id, own);
      }
      if (own.lastDay !== day) {
        own.days += 1;
        if (right) own.rightDays += 1;
        own.lastDay = day;
      }
      if (own.answers.length >= 2 * kept) own.answers = own.answers.slice(-kept);
      own.answers.push(answer);
    }
  }
}

const nothing: FactPast = { days: 0, rightDays: 0, answers: [] };

/** Right, and as far as can be told under about 3 s. */
export function isGood(answer: Answer): boolean {
  return answer.outcome === 'right' && isQuick(answer) !== false;
}

/** Whether an answer was thought of under about 3 s; `null` where that can't be told. */
export function isQuick(answer: Answer): boolean | null {
  const { firstKeyMs } = answer;
  if (firstKeyMs === null) return null;
  const think = thinkOf(answer);
  if (think !== null) return think < quickMs;
  return firstKeyMs < quickMs ? true : null;
}
