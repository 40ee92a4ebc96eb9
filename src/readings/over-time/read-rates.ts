import type { Marked } from '../../core/marking/marked';
import type { ChildLog, ReadSat } from '../child-log/child-log';
import { conditionsOf, isPlainSheet } from '../rates/conditions';
import { type Stretch, type TrendPoint, trendOf } from '../rates/trend';

/** What is followed from sheet to sheet: facts and digits right a minute, or the count right by the bell. */
export type RateName = 'facts' | 'digits' | 'count';

/** One rate over time, with the clock and without; each breaks where a condition changes. */
export interface RateOverTime {
  readonly rate: RateName;
  readonly withClock: boolean;
  readonly stretches: readonly Stretch[];
}

const valueIn: Readonly<Record<RateName, (marked: Marked) => number | null>> = {
  facts: ({ factsPerMin }) => factsPerMin,
  digits: ({ digitsPerMin }) => digitsPerMin,
  count: ({ rightByBell }) => rightByBell,
};

/** Rates from sheet to sheet. Sheets with and without the clock take turns in many houses, so they are followed apart. */
export function readRates(log: ChildLog): readonly RateOverTime[] {
  const sheets = log.sats.filter(isWhole);
  return [true, false].flatMap((withClock) => {
    const own = sheets.filter(({ ruled }) => (ruled.sat.clock !== null) === withClock);
    const conditions = own.map(({ ruled }) => conditionsOf(ruled.sat));
    const rates: readonly RateName[] = withClock ? ['facts', 'digits', 'count'] : ['facts', 'digits'];
    return rates.map((rate): RateOverTime => {
      const points = own.flatMap(({ marked }, index): readonly TrendPoint[] => {
        const [value, now] = [valueIn[rate](marked), conditions[index]];
        if (value === null || !now) return [];
        const ceiling = withClock ? ceilingOf(rate, marked) : null;
        return [{ day: own[index]?.ruled.sat.day ?? '', value, ceiling, conditions: now }];
      });
      return { rate, withClock, stretches: trendOf(points) };
    });
  });
}

/** The first sheet of a day, the child's own, unbroken and no look-back. */
function isWhole({ ruled, marked, counts }: ReadSat): boolean {
  const { sat } = ruled;
  return isPlainSheet(sat) && counts && !sat.second && !marked.interrupted;
}

/** With the clock no more than the whole sheet can be right. */
function ceilingOf(
  rate: RateName,
  { places, rightByBell, factsPerMin, digitsPerMin }: Marked,
): number | null {
  if (rate === 'count') return places.length;
  const isAll = rightByBell === places.length;
  return isAll ? (rate === 'facts' ? factsPerMin : digitsPerMin) : null;
}
