import type { FactId } from '../fact/fact';
import type { SpokenAnswer } from '../record/household-record';
import type { Day } from '../record/stamp';
import { lastRightKept } from '../summary/fact-summary';
import type { FactSummary, Summary } from '../summary/summary';

/** A spoken check held, as far as memory goes. */
interface Heard {
  readonly day: Day;
  readonly answers: readonly { readonly fact: FactId; readonly came: SpokenAnswer }[];
}

/**
 * What is known of the facts with what was heard aloud: each one asked was met that day, and one that came right
 * without help was right at first try, once a day at most. For how strongly a fact is held and how long it was not met,
 * and for nothing else: whether it is had, new or accurate is for the child's own work to say.
 */
export function withHeard(facts: Summary['facts'], spoken: readonly Heard[]): Summary['facts'] {
  if (spoken.length === 0) return facts;
  const all = new Map(facts);
  for (const { day, answers } of spoken)
    for (const { fact, came } of answers) all.set(fact, heard(all.get(fact) ?? unmet, day, came));
  return all;
}

const unmet: FactSummary = {
  rightDays: 0,
  firstRight: null,
  lastRight: [],
  seen: 0,
  lastSeen: '',
  recent: '',
};

function heard(fact: FactSummary, day: Day, came: SpokenAnswer): FactSummary {
  const met = { ...fact, lastSeen: day > fact.lastSeen ? day : fact.lastSeen };
  if (came !== 'right' || fact.lastRight.includes(day)) return met;
  return {
    ...met,
    rightDays: fact.rightDays + 1,
    firstRight: fact.firstRight !== null && fact.firstRight < day ? fact.firstRight : day,
    lastRight: [...fact.lastRight, day].sort().slice(-lastRightKept),
  };
}
