/** A count as a rate: count × 60 / seconds; `null` where no time passed. */
export function perMinute(count: number, ms: number): number | null {
  return ms > 0 ? (count * 60_000) / ms : null;
}
