import { promisifyRequest, type UseStore } from 'idb-keyval';
import { LogTroubleError, troubleOf } from './trouble';

const databaseVersion = 1;
const storeName = 'log';

/** A store whose writes are on the disk when they are acknowledged, and that opens again when it was closed. */
export function strictStore(name: string): UseStore {
  let opened: Promise<IDBDatabase> | null = null;

  function open(): Promise<IDBDatabase> {
    opened ??= openDatabase(name).then(
      (database) => {
        // A later version in another tab must not wait for this one, and some browsers close without being asked.
        database.onversionchange = () => {
          opened = null;
          database.close();
        };
        database.onclose = () => {
          opened = null;
        };
        return database;
      },
      (error) => {
        opened = null;
        throw troubleOf(error, true);
      },
    );
    return opened;
  }

  async function begin(mode: IDBTransactionMode): Promise<IDBObjectStore> {
    return (await open()).transaction(storeName, mode, { durability: 'strict' }).objectStore(storeName);
  }

  return async (mode, callback) => {
    const store = await begin(mode).catch((error) => {
      if ((error as DOMException).name !== 'InvalidStateError') throw error;
      opened = null;
      return begin(mode);
    });
    return callback(store);
  };
}

function openDatabase(name: string): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, databaseVersion);
    request.onupgradeneeded = () => request.result.createObjectStore(storeName);
    request.onblocked = () => {
      reject(new LogTroubleError('blocked'));
      // Should it open after all, nobody waits for it, and it must not stand in another's way.
      request.addEventListener('success', () => request.result.close());
    };
    promisifyRequest<IDBDatabase>(request).then(resolve, reject);
  });
}

/** Reads in one transaction. */
export async function read<T>(use: UseStore, work: (store: IDBObjectStore) => Promise<T>): Promise<T> {
  try {
    return await use('readonly', work);
  } catch (error) {
    throw troubleOf(error);
  }
}

/** Writes in one transaction: all of it or nothing, and acknowledged only when it is complete. */
export async function write<T>(use: UseStore, work: (store: IDBObjectStore) => T | Promise<T>): Promise<T> {
  try {
    return await use('readwrite', async (store) => {
      const { transaction } = store;
      const done = completed(transaction);
      try {
        const result = await work(store);
        await done;
        return result;
      } catch (error) {
        done.catch(() => undefined);
        abort(transaction);
        throw transaction.error ?? error;
      }
    });
  } catch (error) {
    throw troubleOf(error);
  }
}

// Not `promisifyRequest`: it rejects when a request's error passes by, before the transaction knows its own.
function completed(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.addEventListener('complete', () => resolve());
    transaction.addEventListener('abort', () => reject(transaction.error));
  });
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It had ended by itself.
  }
}

/** All values in a range of keys, in their order. */
export function getAll<T>(store: IDBObjectStore, range: IDBKeyRange): Promise<T[]> {
  return promisifyRequest<T[]>(store.getAll(range));
}

/** The value at a key. */
export function getOne<T>(store: IDBObjectStore, key: string): Promise<T | undefined> {
  return promisifyRequest<T | undefined>(store.get(key));
}
