import { foldHousehold } from '../core/household/fold-household';
import type { HouseholdRecord } from '../core/record/household-record';
import type { LogRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { stamp } from './append';
import { dropCheckpoints, readHead, writeHead } from './head';
import { homeRange, keyOf } from './keys';
import type { Log } from './log';
import { purge } from './purge';
import { getAll, write } from './store';

/** Deletes a child for good: all of its records go and the tombstone stays, in one transaction. */
export async function deleteChild(log: Log, child: Id): Promise<LogRecord> {
  const tombstone = await write(log.store, async (store) => {
    const head = await readHead(store);
    const home = await getAll<HouseholdRecord>(store, homeRange());
    const made = stamp(log, { kind: 'childDeleted', child }, head.seq + 1, log.ports.randomId());
    await purge(store, foldHousehold([...home, made as HouseholdRecord]), home, child);
    store.put(made, keyOf(made));
    const gone = head.gone.includes(child) ? head.gone : [...head.gone, child];
    writeHead(
      store,
      dropCheckpoints(store, { ...head, seq: made.seq, gone }, (other) => other === child),
    );
    return made;
  });
  log.news.tell(null);
  return tombstone;
}
