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
    if (!kept || compareStamps(kept, record) < 0) byId.set(record.id, record);
  }
  const all = [...byId.values()].sort(compareStamps);
  const readable = all.filter((record) => record.v <= recordVersion && kinds.has(record.kind));
  return { records: readable, later: all.length - readable.length };
}
