import type { BrowserContext, Page } from './browser';

/** A disk that can be filled: a write then fails as a browser's does. */
export function withDisk(context: BrowserContext): Promise<unknown> {
  return context.addInitScript(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...given) {
      if (Reflect.get(globalThis, 'isFull') === true) throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
}

/** Fills the disk, or makes room. */
export async function setFull(page: Page, isFull: boolean): Promise<void> {
  await page.evaluate((full) => Reflect.set(globalThis, 'isFull', full), isFull);
}
