import type { ChildSettings } from '../record/settings';

/** Where the count right by the bell falls: a weave's firmness, from closest to most open. */
export type Band = 'firm' | 'even' | 'loose' | 'thin';

/** From the top band to the lowest. */
export const bands: readonly Band[] = ['firm', 'even', 'loose', 'thin'];

/** The length the limits are given for. */
const limitsLength = 25;

/** A limit of 25 for another length: in proportion, rounded up (common practice, no source). */
export function scaleLimit(limit: number, length: number): number {
  return Math.ceil((limit * length) / limitsLength);
}

/** The band of a count right by the bell on a sheet of `length` facts. */
export function bandOf(right: number, length: number, limits: ChildSettings['limits']): Band {
  if (right >= scaleLimit(limits.firm, length)) return 'firm';
  if (right >= scaleLimit(limits.even, length)) return 'even';
  return right >= scaleLimit(limits.loose, length) ? 'loose' : 'thin';
}
