/** A moment as ISO 8601 with its own offset: `2026-11-25T09:05:00+01:00`; `offsetMin` in minutes east. */
export function isoTime(atMs: number, offsetMin: number): string {
  const local = new Date(atMs + offsetMin * 60_000).toISOString().slice(0, 19);
  const sign = offsetMin < 0 ? '-' : '+';
  const off = Math.abs(Math.round(offsetMin));
  return `${local}${sign}${twoDigits(Math.floor(off / 60))}:${twoDigits(off % 60)}`;
}

function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}
