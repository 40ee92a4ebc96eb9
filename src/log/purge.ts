import { isGone } from '../core/household/gone';
import type { Household } from '../core/household/household';
import type { HouseholdRecord } from '../core/record/household-record';
import type { HistoryRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { dropJournalsOf } from './journal';
import { historyRange, keyOf } from './keys';
import { kioskKey } from './kiosk';
import { getMoved } from './reads';
import { getAll, getOne } from './store';

/**
 * Removes all that belongs to a child that `household` knows as deleted, inside a transaction; its tombstones stay.
 * What a ruling had given to another child stays too: a record belongs to the child it has after the rulings.
 */
export async function purge(
  store: IDBObjectStore,
  household: Household,
  home: readonly HouseholdRecord[],
  child: Id,
): Promise<void> {
  const stored = await getAll<HistoryRecord>(store, historyRange(child, null));
  const movedHere = household.moves.filter(({ to }) => to === child).map((move) => getMoved(store, move));
  const history = [...stored, ...(await Promise.all(movedHere)).flat()];
  for (const record of [...home, ...history]) {
    if (household.childOf(record) === child && isGone(household, record)) store.delete(keyOf(record));
  }
  await dropJournalsOf(store, child);
  if ((await getOne(store, kioskKey)) === child) store.delete(kioskKey);
}
