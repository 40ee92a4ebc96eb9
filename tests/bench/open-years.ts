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
  const children = [...new Set(records.flatMap((record) => (record.kind === 'sat' ? [record.child] : [])))];
  for (let tries = 0; tries < 600 && !(await isSummedUp(device, children)); tries += 1)
    await device.page.waitForTimeout(250);
  await device.page.reload();
  await settle(device.page);
  return device;
}

/** Whether each child's checkpoint has come to within weeks of the last day, or the child has too little to be summed up. */
function isSummedUp({ page }: Device, children: readonly string[]): Promise<boolean> {
  return page.evaluate(async (all) => {
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
    const left = await Promise.all(
      all.map((child) =>
        ask(store.count(IDBKeyRange.bound(`hist/${child}/${head.reach[child] ?? ''}`, `hist/${child}0`))),
      ),
    );
    database.close();
    return left.every((many, nth) => many < (head.reach[all[nth] ?? ''] === undefined ? 300 : 60));
  }, children);
}
