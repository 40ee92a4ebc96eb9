import type { Sat } from '../record/sat';

/**
 * For each visit, ms of the sitting up to its end, from the first onset on; void visits and the time up to the next
 * onset are left out. `null` where times were not kept.
 */
export function activeTimes({ visits, away }: Pick<Sat, 'visits' | 'away'>): readonly (number | null)[] {
  const breaks = new Set(away.map((span) => span.afterVisits));
  let total: number | null = 0;
  let sinceMs: number | null = null;
  return visits.map(({ onsetMs, end, endMs }, index) => {
    const fromMs: number | null = breaks.has(index) || sinceMs === null ? onsetMs : sinceMs;
    const toMs = end === 'left' ? onsetMs : endMs;
    sinceMs = end === 'left' ? null : endMs;
    total = total === null || fromMs === null || toMs === null ? null : total + toMs - fromMs;
    return total;
  });
}
