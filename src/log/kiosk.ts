import type { Id } from '../core/record/stamp';
import type { Log } from './log';
import { getOne, read, write } from './store';

export const kioskKey = 'meta/kiosk';

/** Which child this device is given to; `null` when it asks whose cloth. */
export async function readActiveChild(log: Log): Promise<Id | null> {
  const kept = await read(log.store, (store) => getOne<unknown>(store, kioskKey));
  return typeof kept === 'string' ? kept : null;
}

/** Gives this device to a child, or to nobody. */
export function writeActiveChild(log: Log, child: Id | null): Promise<void> {
  return write(log.store, (store) => {
    if (child === null) store.delete(kioskKey);
    else store.put(child, kioskKey);
  });
}
