import { promisifyRequest } from 'idb-keyval';

/**
 * Makes the browser put what it wrote last in order, so that a kill in mid-write harms no later start; never fails.
 *
 * Chromium appends every change to one log file of the origin and goes on appending to it after a kill. A record torn
 * by the kill is passed over once, as the end of the file; but with anything written behind it the next start, even
 * after an orderly end, takes the whole file for corrupt and erases the origin's databases. Deleting a database makes
 * it write what stands so far into a file of its own and begin a new log, and the torn record is gone.
 */
export async function clearTail(name: string): Promise<void> {
  const passing = `${name}-tail`;
  try {
    // One that was never there is deleted without any of this.
    const database = await promisifyRequest<IDBDatabase>(indexedDB.open(passing, 1));
    database.close();
    await promisifyRequest(indexedDB.deleteDatabase(passing));
  } catch {
    // A precaution only: whether anything can be stored is for the store itself to find out and tell.
  }
}
