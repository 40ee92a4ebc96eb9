import { isNewFact } from './not-known';
import { isQuick } from './past';
import { isSlowSheet, type Sheet } from './sheet';
import type { Checking } from './verdict';

/** Fewer answers, or earlier ones, say little. */
const fewest = { answers: 8, before: 20 } as const;

/**
 * At most one in twenty wrong today and one in ten before, and before now and then quick: who still counts is hardly
 * ever quick (our own decisions, no source).
 */
const shares = { right: 0.95, rightBefore: 0.9, quickBefore: 0.25 } as const;

/**
 * Slow and right, on facts that have come quickly before: a slow child without errors may know and be checking
 * (Siegler 1988; Kerkman & Siegler 1997).
 */
export function checking(sheet: Sheet): Checking | null {
  const { read, past, thinkMs } = sheet;
  if (!isSlowSheet(sheet) || thinkMs === null) return null;
  const own = read.answers.filter(({ slip, fact }) => slip !== true && !isNewFact(past.of(fact.id)));
  const right = own.filter(({ outcome }) => outcome === 'right').length;
  if (own.length < fewest.answers || right < shares.right * own.length) return null;
  const facts = new Set(own.map(({ fact }) => fact.id));
  const before = [...facts].flatMap((fact) => past.of(fact).answers);
  const rightBefore = before.filter(({ outcome }) => outcome === 'right');
  const quickBefore = rightBefore.filter((answer) => isQuick(answer) === true).length;
  if (before.length < fewest.before || rightBefore.length < shares.rightBefore * before.length) return null;
  if (quickBefore < shares.quickBefore * before.length) return null;
  return {
    name: 'checking',
    right,
    of: own.length,
    thinkS: thinkMs / 1000,
    quickBefore,
    ofBefore: before.length,
  };
}
