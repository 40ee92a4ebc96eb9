import type { LogRecord } from '../../src/core/record/record';
import { type Device, type DeviceOptions, openDevice, settle } from '../journeys/device';
import { watchTasks } from './long-tasks';
import { putYears } from './years-in-store';

/** A device with these records in its store, opened often enough that they are summed up as in a house that lived them. */
export async function openYears(records: readonly LogRecord[], options: DeviceOptions = {}): Promise<Device> {
  const device = await openDevice({ ...options, before: watchTasks });
  await putYears(device.page, records);
  await device.page.reload();
  await settle(device.page);
  const children = new Set(records.flatMap((record) => (record.kind === 'sat' ? [record.child] : [])));
  for (let tries = 0; tries < 600 && (await summedUp(device, children.size)) < children.size; tries += 1)
    await device.page.waitForTimeout(250);
  await device.page.reload();
  await settle(device.page);
  return device;
}

/** How many children's checkpoints have come to within a month of their last day. */
async function summedUp({ page }: Device, children: number): Promise<number> {
  if (children === 0) return 0;
  return page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open('sumstitch');
      request.onsuccess = () => resolve(request.result);
    });
    const store = database.transaction('log').objectStore('log');
    const ask = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve) => {
        request.onsuccess = () => resolve(request.result);
      });
    const head = await ask<{ reach: Record<string, string> }>(store.get('meta/head'));
    let done = 0;
    for (const [child, reach] of Object.entries(head.reach)) {
      const left = await ask(store.count(IDBKeyRange.bound(`hist/${child}/${reach}`, `hist/${child}0`)));
      if (left < 60) done += 1;
    }
    database.close();
    return done;
  });
}
