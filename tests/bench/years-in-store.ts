import type { KeptSecret } from '../../src/core/gate/gate-data';
import type { LogRecord } from '../../src/core/record/record';
import { firstHead } from '../../src/log/head';
import { headKey, keyOf } from '../../src/log/keys';
import { keepSecret } from '../../src/state/pin-hash';
import type { Page } from '../journeys/browser';
import { pin } from '../journeys/parent-hand';
import { householdOf } from './household-of-years';

/** A lot of records as they cross to the browser; all at once they would not. */
const lot = 400;

/** So many records of made children, newest kept, their days moved so that the last is this one's day before. */
export function recordsOf(sittings: number): readonly LogRecord[] {
  if (sittings === 0) return householdOf(1, 6).filter(({ kind }) => kind !== 'sat');
  const perYear = 6 * 180;
  const years = Math.max(1, Math.ceil(sittings / perYear));
  const made = householdOf(years);
  const sheets = made.filter((record) => record.kind === 'sat' && record.purpose === 'sheet').length;
  if (sheets <= sittings) return made;
  const share = sittings / sheets;
  const own = new Map<string, number>();
  return made.filter((record) => {
    if (record.kind !== 'sat') return true;
    const nth = (own.get(record.child) ?? 0) + 1;
    own.set(record.child, nth);
    return nth <= (share * made.length) / 6;
  });
}

/** Puts records and a gate of the journeys' PIN into the open app's store. */
export async function putYears(page: Page, records: readonly LogRecord[]): Promise<void> {
  const pinKept: KeptSecret = await keepSecret(pin, 1000);
  const seq = records.reduce((highest, record) => Math.max(highest, record.seq), 0);
  await put(page, [
    ['meta/gate', { v: 1, pin: pinKept, recovery: pinKept, tries: 0, waitDue: false }],
    [headKey, { ...firstHead, seq }],
  ]);
  for (let from = 0; from < records.length; from += lot) {
    const some = records.slice(from, from + lot);
    await put(
      page,
      some.map((record) => [keyOf(record), record]),
    );
  }
}

async function put(page: Page, entries: readonly (readonly [key: string, value: unknown])[]): Promise<void> {
  await page.evaluate(async (all) => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open('sumstitch');
      request.onsuccess = () => resolve(request.result);
    });
    const transaction = database.transaction('log', 'readwrite', { durability: 'relaxed' });
    const store = transaction.objectStore('log');
    for (const [key, value] of JSON.parse(all) as [string, unknown][]) store.put(value, key);
    await new Promise((resolve) => transaction.addEventListener('complete', resolve));
    database.close();
  }, JSON.stringify(entries));
}
