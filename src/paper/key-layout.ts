import { marginMm, type PaperSize, paperSizes } from './paper-size';
import { across } from './sheet-layout';

/** A key's head and each of its rows, mm, and what parts it from the next (as in paper.css). */
export const keyMm = { head: 9, row: 6.2, gap: 6 } as const;
const titleMm = 12;

/** Keys packed on as few pages as hold them whole, in their order. */
export function packKeys<K extends { readonly facts: readonly unknown[] }>(
  keys: readonly K[],
  size: PaperSize,
): readonly (readonly K[])[] {
  const freeMm = paperSizes[size].heightMm - 2 * marginMm - titleMm;
  const pages: K[][] = [];
  let usedMm = freeMm;
  for (const key of keys) {
    const tallMm = keyMm.head + Math.ceil(key.facts.length / across) * keyMm.row + keyMm.gap;
    if (usedMm + tallMm > freeMm || pages.length === 0) {
      pages.push([]);
      usedMm = 0;
    }
    pages.at(-1)?.push(key);
    usedMm += tallMm;
  }
  return pages;
}
