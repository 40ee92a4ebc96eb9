/**
 * Why nothing is claimed: too few facts or one-way items, too few days, no more than chance gives, days that
 * don't agree among themselves, or practice, which helps whichever days came later.
 */
export type NoClaim = 'tooFewFacts' | 'tooFewDays' | 'notBeyondChance' | 'notOnMostDays' | 'practice';

/** What a claim rests on. `clockLaterDays`: by how many days those with the clock came later, on average. */
export interface Grounds {
  readonly items: number;
  readonly days: number;
  readonly pTwoSided: number;
  readonly alpha: number;
  /** The p-value of the days, where they were asked. */
  readonly pByDay: number | null;
  /** Whether the clock's days look the better ones. */
  readonly clockBetter: boolean;
  readonly clockLaterDays: number;
}

/** Fewer items, or days, can't be beyond chance at .05. */
const fewestItems = 6;

/** Days on which all facts are slower together need not be the clock's doing: they are asked at this level too. */
const dayAlpha = 0.05;

/** From so many days between the two kinds on, practice alone could be what is seen (our own decision, no source). */
const practiceDays = 3;

/** The first reason against a claim; `null` when one may be made. */
export function whyNoClaim(grounds: Grounds): NoClaim | null {
  const { items, days, pTwoSided, alpha, pByDay, clockBetter, clockLaterDays } = grounds;
  if (items < fewestItems) return 'tooFewFacts';
  if (days < fewestItems) return 'tooFewDays';
  if (pTwoSided > alpha) return 'notBeyondChance';
  if (pByDay !== null && pByDay > dayAlpha) return 'notOnMostDays';
  const laterIsBetter = clockBetter ? clockLaterDays > practiceDays : clockLaterDays < -practiceDays;
  return laterIsBetter ? 'practice' : null;
}
