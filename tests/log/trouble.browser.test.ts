import type { UseStore } from 'idb-keyval';
import { expect, test } from 'vitest';
import { append } from '../../src/log/append';
import { openJournals, sealJournal } from '../../src/log/journal';
import { isLog, type Log, openLog } from '../../src/log/log';
import { readHousehold } from '../../src/log/reads';
import { LogTroubleError, troubleOf } from '../../src/log/trouble';
import {
  ann,
  beginJournal,
  bo,
  countingPorts,
  dump,
  freshName,
  openFresh,
  planOf,
  satDraft,
  wait,
} from './open-a-log';

const { plan, start } = planOf('ann', '2026-03-02');

/** The log with a disk that is full once `room` puts have been made. */
function withFullDisk(log: Log, room: number): Log {
  let puts = 0;
  const store: UseStore = (mode, work) =>
    log.store(mode, (real) =>
      work(
        new Proxy(real, {
          get(target, name) {
            if (name === 'put' && puts++ >= room) {
              throw new DOMException('no room', 'QuotaExceededError');
            }
            const value = Reflect.get(target, name);
            return typeof value === 'function' ? value.bind(target) : value;
          },
        }),
      ),
    );
  return { ...log, store };
}

async function troubleIn(work: Promise<unknown>): Promise<string> {
  const error = await work.then(
    () => null,
    (thrown: unknown) => thrown,
  );
  return error instanceof LogTroubleError ? error.trouble.what : `not trouble: ${error}`;
}

test('a full disk is told as such, and of what was to be written nothing is', async () => {
  const log = await openFresh();
  await append(log, [ann]);
  const before = await dump(log);
  for (const room of [0, 1, 2]) {
    expect(await troubleIn(append(withFullDisk(log, room), [ann, bo]))).toBe('full');
    expect(await dump(log)).toEqual(before);
  }
  expect((await append(log, [bo]))[0]?.seq).toBe(2);
});

test('a sealing that fails leaves the journal as it was', async () => {
  const log = await openFresh();
  const id = await beginJournal(log, plan, start);
  const before = await dump(log);
  for (const room of [0, 1]) {
    expect(await troubleIn(sealJournal(withFullDisk(log, room), id, satDraft('ann', '2026-03-02')))).toBe(
      'full',
    );
    expect(await dump(log)).toEqual(before);
  }
  expect(await openJournals(log)).toHaveLength(1);
});

test('something that cannot be stored is trouble, and nothing beside it is stored', async () => {
  const log = await openFresh();
  const before = await dump(log);
  const impossible = { ...ann, name: (() => '') as unknown as string };
  expect(await troubleIn(append(log, [bo, impossible]))).toBe('unknown');
  expect(await dump(log)).toEqual(before);
});

test('what is acknowledged is complete', async () => {
  const log = await openFresh();
  let isComplete = false;
  const store: UseStore = (mode, work) =>
    log.store(mode, (real) => {
      real.transaction.addEventListener('complete', () => {
        isComplete = true;
      });
      return work(real);
    });
  await append({ ...log, store }, [ann]);
  expect(isComplete).toBe(true);
});

test('a transaction that falls through after its last write is not acknowledged', async () => {
  const log = await openFresh();
  const before = await dump(log);
  const store: UseStore = (mode, work) =>
    log.store(mode, async (real) => {
      const result = work(real);
      // Requests are answered in order, so this one comes after all that `append` asked first.
      real.get('meta/head').onsuccess = () => {
        real.count().onsuccess = () => real.transaction.abort();
      };
      return result;
    });
  expect(await troubleIn(append({ ...log, store }, [ann]))).toBe('unknown');
  expect(await dump(log)).toEqual(before);
});

test('a database of a later version is left alone', async () => {
  const name = freshName();
  const later = indexedDB.open(name, 2);
  later.onupgradeneeded = () => later.result.createObjectStore('log').put('precious', 'key');
  const database = await wait(later);
  database.close();
  const opened = await openLog(countingPorts('t'), name);
  expect(opened).toEqual({ what: 'later' });
  const again = await wait(indexedDB.open(name, 2));
  expect(await wait(again.transaction('log').objectStore('log').get('key'))).toBe('precious');
  again.close();
});

test('a later version opening in another tab is not held up, and this tab then says so', async () => {
  const name = freshName();
  const log = await openFresh(name);
  const later = await wait(indexedDB.open(name, 2));
  expect(await troubleIn(append(log, [ann]))).toBe('later');
  later.close();
});

test('an old version that another tab holds open is told as such, and is no hindrance once it is closed', async () => {
  const name = freshName();
  const old = await wait(indexedDB.open(name, 1));
  const open = indexedDB.open;
  indexedDB.open = (asked) => open.call(indexedDB, asked, 2);
  const opened = await openLog(countingPorts('t'), name).finally(() => {
    indexedDB.open = open;
  });
  expect(opened).toEqual({ what: 'blocked' });
  old.close();
  await wait(indexedDB.deleteDatabase(name));
});

test('a connection closed under the page is opened again', async () => {
  const log = await openFresh();
  await append(log, [ann]);
  await log.store('readonly', (store) => store.transaction.db.close());
  expect(await readHousehold(log)).toHaveLength(1);
  await log.store('readonly', (store) => store.transaction.db.close());
  expect((await append(log, [bo]))[0]?.seq).toBe(2);
});

test('a store erased while the page was open takes nothing and says that it is gone', async () => {
  const name = freshName();
  const log = await openFresh(name);
  await append(log, [ann]);
  await wait(indexedDB.deleteDatabase(name));
  expect(await troubleIn(append(log, [bo]))).toBe('gone');
  const again = await openFresh(name);
  expect((await append(again, [bo]))[0]?.seq).toBe(1);
});

test('a browser that refuses to store says so at opening', async () => {
  const open = indexedDB.open;
  for (const name of ['SecurityError', 'InvalidStateError', 'NotAllowedError']) {
    indexedDB.open = () => {
      throw new DOMException('no', name);
    };
    try {
      const opened = await openLog(countingPorts('t'), freshName());
      expect(isLog(opened) ? null : opened.what).toBe('refused');
    } finally {
      indexedDB.open = open;
    }
  }
});

test.each([
  ['QuotaExceededError', 'full'],
  ['VersionError', 'later'],
  ['SecurityError', 'refused'],
  ['InvalidStateError', 'gone'],
  ['UnknownError', 'unknown'],
])('%s is %s', (name, what) => {
  expect(troubleOf(new DOMException('', name)).trouble.what).toBe(what);
});

test('even an error that is nothing at all is trouble', () => {
  expect(troubleOf(null).trouble.what).toBe('unknown');
});
