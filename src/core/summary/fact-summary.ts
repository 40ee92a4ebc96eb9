import type { Day } from '../record/stamp';
import type { FactSummary } from './summary';

const recentKept = 8;
/** How many of the newest days on which a fact was right are kept each by itself. */
export const lastRightKept = 4;

/** A fact with one more answer; after it `wasShown` that day no answer is a first try. */
export function withAnswer(
  before: FactSummary | undefined,
  day: Day,
  right: boolean,
  wasShown: boolean,
): FactSummary {
  const isRightDay = right && !wasShown && before?.lastSeen !== day;
  const lastRight = before?.lastRight ?? [];
  return {
    rightDays: (before?.rightDays ?? 0) + (isRightDay ? 1 : 0),
    firstRight: before?.firstRight ?? (isRightDay ? day : null),
    lastRight: isRightDay ? [...lastRight, day].slice(-lastRightKept) : lastRight,
    seen: (before?.seen ?? 0) + 1,
    lastSeen: day,
    recent: ((before?.recent ?? '') + (right ? '1' : '0')).slice(-recentKept),
  };
}
