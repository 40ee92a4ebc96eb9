/** A record's, child's, set's or device's id: letters, digits and hyphens, safe as a path segment. */
export type Id = string;

/** A local date, `2026-11-25`. */
export type Day = string;

/** The newest record format this build reads and the one it writes. */
export const recordVersion = 1;

/** The device that the demo household was made on; no real one has this id. */
export const boatDevice: Id = 'boat';

/** The highest counter taken from another device: it leaves room for this one's own records. */
export const highestSeq = 1e11;

/** What every record carries. `seq` is the logical counter: one more than the highest seen when it was made. */
export interface Stamp {
  readonly id: Id;
  readonly v: number;
  readonly seq: number;
  readonly device: Id;
  /** Wall clock, ms since 1970: for people only, never for order. */
  readonly at: number;
}

/** The log's order: counter, then device, then id. Negative when `x` comes first. */
export function compareStamps(x: Stamp, y: Stamp): number {
  return x.seq - y.seq || compareText(x.device, y.device) || compareText(x.id, y.id);
}

function compareText(x: string, y: string): number {
  return x < y ? -1 : x > y ? 1 : 0;
}
