import { compareStamps, type Id, recordVersion, type Stamp } from '../record/stamp';

type Kinded = Stamp & { readonly kind: string };

/** Records this build can read, each id once, in the log's order; and how many it cannot read. */
export interface Ordered<R> {
  readonly records: readonly R[];
  readonly later: number;
}

/** Sorts out duplicates, foreign kinds and later versions, whatever order the records arrived in. */
export function inOrder<R extends Kinded>(records: readonly R[], kinds: ReadonlySet<string>): Ordered<R> {
  const byId = new Map<Id, R>();
  for (const record of records) {
    const kept = byId.get(record.id);
    byId.set(record.id, kept ? preferred(kept, record) : record);
  }
  const all = [...byId.values()].sort(compareStamps);
  const readable = all.filter((record) => record.v <= recordVersion && kinds.has(record.kind));
  return { records: readable, later: all.length - readable.length };
}

/**
 * Of two records under one id the one to keep: the later, or else the one whose text sorts last. Two that differ are
 * never made by this app, but a file may have been changed by hand, and every device must keep the same one.
 */
export function preferred<R extends Stamp>(x: R, y: R): R {
  const order = compareStamps(x, y);
  if (order !== 0) return order < 0 ? y : x;
  return x === y || sortedText(x) >= sortedText(y) ? x : y;
}

/** A value as text, the same for the same content in any order of its fields. */
function sortedText(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([x], [y]) => (x < y ? -1 : 1)))
      : inner,
  );
}
