import { type Band, bandOf } from './band';
import type { Marked } from './marked';

/** The band the first `allowanceMs` of an untimed sheet would have fallen in: a reading, never a trigger. */
export function bandInFirst(marked: Marked, allowanceMs: number): Band | null {
  const isKept = marked.places.some(({ atMs }) => atMs !== null);
  return isKept ? bandOf(rightInFirst(marked, allowanceMs), marked.places.length, marked.limits) : null;
}

/** Right answers taken within the first `allowanceMs` of active time. */
export function rightInFirst(marked: Marked, allowanceMs: number): number {
  const isIn = (atMs: number | null) => atMs !== null && atMs <= allowanceMs;
  return marked.places.filter(({ outcome, atMs }) => outcome === 'right' && isIn(atMs)).length;
}
