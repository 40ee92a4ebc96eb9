import { isNewFact } from './not-known';
import { isQuick } from './past';
import { isSlowSheet, type Sheet } from './sheet';
import type { Checking } from './verdict';

/** Fewer answers can be all right by luck. */
const fewestAnswers = 8;

/** At most one in twenty wrong; at least six in ten facts quick on some day before (our own decisions, no source). */
const shares = { right: 0.95, onceQuick: 0.6 } as const;

/**
 * Slow and right, on facts that have come quickly before: a slow child without errors may know and be checking
 * (Siegler 1988; Kerkman & Siegler 1997).
 */
export function checking(sheet: Sheet): Checking | null {
  const { read, past, thinkMs } = sheet;
  const own = read.answers.filter(({ slip }) => slip !== true);
  const right = own.filter(({ outcome }) => outcome === 'right').length;
  if (own.length < fewestAnswers || right < shares.right * own.length) return null;
  if (!isSlowSheet(sheet) || thinkMs === null) return null;
  const pasts = own.map(({ fact }) => past.of(fact.id));
  const onceQuick = pasts.filter(({ answers }) =>
    answers.some((one) => one.outcome === 'right' && isQuick(one)),
  );
  if (pasts.some(isNewFact) || onceQuick.length < shares.onceQuick * own.length) return null;
  return { name: 'checking', right, of: own.length, thinkS: thinkMs / 1000, onceQuick: onceQuick.length };
}
