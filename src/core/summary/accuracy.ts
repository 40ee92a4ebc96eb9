import type { FactId } from '../fact/fact';
import type { Summary } from './summary';

/** How many of a set's last answers without the clock count (design: 45 of its last 50). */
export const accuracyWindow = 50;

/** How many of those must be right. */
export const accurateFrom = 45;

/** Of the last 50 answers without the clock to facts of a set: how many there are and how many were right. */
export function accuracyOf(summary: Summary, facts: ReadonlySet<FactId>): { right: number; of: number } {
  const answers = summary.untimed.filter(([fact]) => facts.has(fact)).slice(-accuracyWindow);
  return { right: answers.filter(([, right]) => right).length, of: answers.length };
}

/** Whether a set is accurate: 45 of its last 50 answers, without the clock, were right. */
export function isAccurate(summary: Summary, facts: ReadonlySet<FactId>): boolean {
  const { right, of } = accuracyOf(summary, facts);
  return of === accuracyWindow && right >= accurateFrom;
}

/** Whether a set is new: some fact of it has not yet been right at first try on three days. */
export function isNew(summary: Summary, facts: ReadonlySet<FactId>): boolean {
  return [...facts].some((fact) => (summary.facts.get(fact)?.rightDays ?? 0) < 3);
}
