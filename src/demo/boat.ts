import { formatISO } from 'date-fns';
import { firstHead } from '../log/head';
import { deviceKey, headKey, keyOf } from '../log/keys';
import { isLog, type Log, openLog } from '../log/log';
import { getOne, read, write } from '../log/store';
import { type LogTrouble, LogTroubleError } from '../log/trouble';
import type { Ports } from '../state/ports';
import { makeBoat } from './make-boat';

export { boatGate } from './boat-gate';

/** The demo household's own database; the real one has another name. */
export const boatName = 'sumstitch-boat';

const boatSeed = 20_260;
/** Where it is written down which boat this is. Another day, or another making, is another boat. */
const madeKey = 'meta/boat';
const making = 1;

/** Makes the boat's household, where none is there yet or it is of another day; or says why that cannot be. */
export async function prepareBoat(ports: Ports): Promise<LogTrouble | null> {
  const log = await openLog(ports, boatName);
  if (!isLog(log)) return log;
  try {
    await fill(log, ports);
    return null;
  } catch (error) {
    if (error instanceof LogTroubleError) return error.trouble;
    throw error;
  } finally {
    log.news.close();
  }
}

async function fill(log: Log, ports: Ports): Promise<void> {
  const today = formatISO(ports.now(), { representation: 'date' });
  const made = `${making}/${today}`;
  if ((await read(log.store, (store) => getOne(store, madeKey))) === made) return;
  const { device, records } = makeBoat(today, boatSeed, (atMs) => ports.zone(atMs));
  // All in one transaction: a boat half made, or of two days, is never seen.
  await write(log.store, (store) => {
    store.clear();
    for (const record of records) store.put(record, keyOf(record));
    store.put({ ...firstHead, seq: records.length }, headKey);
    // What a visitor sits is sat on the same device.
    store.put(device, deviceKey);
    store.put(made, madeKey);
  });
  log.news.tell(null);
}
