import type { FactId } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';
import { type Answer, thinkOf } from '../child-log/answer';
import { dayNumber } from '../day-number';
import { quickMs } from '../facts/pace';

/** One earlier answer on a sheet, as much of it as later sheets are read against. */
interface Before {
  readonly day: number;
  readonly withClock: boolean;
  readonly right: boolean;
  /** Right, and thought of under about 3 s; without a known time, right. */
  readonly quick: boolean;
  readonly logMs: number | null;
  readonly where: string;
}

/** What is known of a fact before the sheet in hand. */
export interface FactPast {
  /** Days on which it was met, and those on which the day's first answer was right. */
  readonly days: number;
  readonly rightDays: number;
  readonly answers: readonly Before[];
}

const kept = 24;

/** How far back, in days, an earlier answer is set beside today's. */
export const nearDays = 28;

interface Growing {
  days: number;
  rightDays: number;
  lastDay: Day | null;
  answers: Before[];
}

/** What came before, growing sheet by sheet. Extra rows are left out: they can only look better. */
export class Past {
  readonly #facts = new Map<FactId, Growing>();

  of(fact: FactId): FactPast {
    return this.#facts.get(fact) ?? nothing;
  }

  add(answers: readonly Answer[]): void {
    for (const answer of answers) {
      const { fact, day, outcome, onRow } = answer;
      if (onRow) continue;
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
      own.answers.push(beforeOf(answer, right));
    }
  }
}

const nothing: FactPast = { days: 0, rightDays: 0, answers: [] };

function beforeOf(answer: Answer, right: boolean): Before {
  const { day, withClock, firstKeyMs, where } = answer;
  return {
    day: dayNumber(day),
    withClock,
    right,
    quick: right && isQuick(answer) !== false,
    logMs: firstKeyMs === null ? null : Math.log(firstKeyMs),
    where,
  };
}

/** Whether an answer was thought of under about 3 s; `null` where that can't be told. */
export function isQuick(answer: Answer): boolean | null {
  const { firstKeyMs } = answer;
  if (firstKeyMs === null) return null;
  const think = thinkOf(answer);
  if (think !== null) return think < quickMs;
  return firstKeyMs < quickMs ? true : null;
}
