import { recordsOf, renamed } from '../../core/household/bring-back';
import type { Household } from '../../core/household/household';
import type { LogRecord } from '../../core/record/record';
import type { Id } from '../../core/record/stamp';

/**
 * A deleted child's records in a file as those of a new child. Its ids come from the old ones and from the tombstone,
 * which is the deleted child's id, by SHA-256: two devices that do the same to the same file agree.
 */
export async function asNewChild(
  child: Id,
  records: readonly LogRecord[],
  household: Household,
): Promise<readonly LogRecord[]> {
  const own = recordsOf(child, records, household);
  const newChild = await newIdOf(child, household);
  const newIds = new Map([[child, newChild]]);
  await Promise.all(own.map(async ({ id }) => newIds.set(id, await derivedId(newChild, id))));
  return renamed(own, newIds);
}

/** The id a deleted child comes back under: one that was not deleted in its turn. */
async function newIdOf(child: Id, household: Household): Promise<Id> {
  const next = await derivedId(child, child);
  return household.tombstones.has(next) ? newIdOf(next, household) : next;
}

async function derivedId(child: Id, id: Id): Promise<Id> {
  const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(`${child}/${id}`));
  const hex = Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0'));
  return hex.slice(0, 16).join('');
}
