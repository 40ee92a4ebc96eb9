import type { FactId } from '../fact/fact';
import type { FactSummary, Summary } from '../summary/summary';

/** What is read of a child to tell what it has. `ticked`: known by the parent's word. */
export interface HadSource {
  readonly facts: Summary['facts'];
  readonly ticked: ReadonlySet<FactId>;
}

/** Whether a fact was never answered, nor ticked by the parent. */
export function isUntried(fact: FactId, { facts, ticked }: HadSource): boolean {
  return !facts.has(fact) && !ticked.has(fact);
}

/**
 * Whether the child has a fact: right at first try on some day, and the last answer, or two of the last three, right.
 * One never answered is had where the parent ticked it (our own decision).
 */
export function isHad(fact: FactId, { facts, ticked }: HadSource): boolean {
  const met = facts.get(fact);
  return met ? met.rightDays > 0 && isRightLately(met) : ticked.has(fact);
}

function isRightLately({ recent }: FactSummary): boolean {
  const last = [...recent.slice(-3)];
  return last.at(-1) === '1' || last.filter((mark) => mark === '1').length >= 2;
}

/** The facts of a set that are still to be taught, in its order; not those the child has. */
export function toTeach(set: readonly FactId[], source: HadSource): readonly FactId[] {
  return set.filter((fact) => !isHad(fact, source));
}
