import type { FactId } from '../fact/fact';
import type { LineWritten } from '../record/household-record';

/** The longest line a parent writes for a fact, in characters. */
export const longestLine = 60;

/** Whether a parent's line can be used as it is. */
export function isLineFit(line: string): boolean {
  return line.trim() !== '' && line.trim().length <= longestLine;
}

/** The parent's own lines in force: the latest of a fact's records holds; `null` or an empty line takes it away. */
export function foldLines(
  written: readonly Pick<LineWritten, 'fact' | 'line'>[],
): ReadonlyMap<FactId, string> {
  const lines = new Map<FactId, string>();
  for (const { fact, line } of written) {
    lines.delete(fact);
    if (line !== null && line.trim() !== '') lines.set(fact, line.trim());
  }
  return lines;
}
