import type { Day } from '../core/record/stamp';

/** Offset of a place's clock at a moment, minutes east, and the zone's name. */
export type ZoneAt = (atMs: number) => { readonly zone: string; readonly offsetMin: number };

export const utc: ZoneAt = () => ({ zone: 'Etc/UTC', offsetMin: 0 });

/** The moment at which the clocks of a place show a time of a day, ms since 1970. */
export function wallMs(day: Day, hours: number, minutes: number, zoneAt: ZoneAt): number {
  const asIfUtc = Date.parse(`${day}T00:00:00Z`) + (hours * 60 + minutes) * 60_000;
  const near = asIfUtc - zoneAt(asIfUtc).offsetMin * 60_000;
  return asIfUtc - zoneAt(near).offsetMin * 60_000;
}
