import type { Sat, SittingPlan, Visit } from '../../src/core/record/sat';
import type { Page } from './browser';

/** Everything in the household's store, by key. */
export function readStored(page: Page): Promise<Readonly<Record<string, unknown>>> {
  return page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('sumstitch');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const store = database.transaction('log').objectStore('log');
    const ask = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve) => {
        request.onsuccess = () => resolve(request.result);
      });
    const [keys, values] = await Promise.all([ask(store.getAllKeys()), ask(store.getAll())]);
    database.close();
    return Object.fromEntries(keys.map((key, index) => [String(key), values[index]]));
  });
}

/** The sittings recorded, in the order they were sealed. */
export async function storedSats(page: Page): Promise<readonly Sat[]> {
  const stored = await readStored(page);
  return Object.values(stored)
    .filter((value): value is Sat => (value as Partial<Sat> | null)?.kind === 'sat')
    .toSorted((x, y) => x.seq - y.seq);
}

/** What the journal holds of the sitting that stands open: visits by their index. */
export async function storedVisits(page: Page): Promise<readonly Visit[]> {
  const stored = await readStored(page);
  return Object.entries(stored)
    .filter(([key]) => /^journal\/[^/]+\/visit\//.test(key))
    .toSorted(([x], [y]) => (x < y ? -1 : 1))
    .map(([, entry]) => (entry as { readonly visit: Visit }).visit);
}

/** What the sitting that stands open was planned to ask. */
export async function storedPlan(page: Page): Promise<SittingPlan> {
  const stored = await readStored(page);
  const head = Object.entries(stored).find(([key]) => /^journal\/[^/]+\/head$/.test(key))?.[1];
  if (!head) throw new Error('No sitting stands open.');
  return (head as { readonly plan: SittingPlan }).plan;
}

/** Puts something into the store by hand, past the app. */
export async function putStored(page: Page, key: string, value: unknown): Promise<void> {
  await page.evaluate(
    async ([at, what]) => {
      const database = await new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open('sumstitch');
        request.onsuccess = () => resolve(request.result);
      });
      const transaction = database.transaction('log', 'readwrite');
      transaction.objectStore('log').put(what, at as string);
      await new Promise((resolve) => transaction.addEventListener('complete', resolve));
      database.close();
    },
    [key, value] as const,
  );
}
