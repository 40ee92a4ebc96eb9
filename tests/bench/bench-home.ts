import type { Page } from 'playwright';
import type { LogRecord } from '../../src/core/record/record';
import type { ChildSettings } from '../../src/core/record/settings';
import { firstHead } from '../../src/log/head';
import { headKey, keyOf } from '../../src/log/keys';
import { kioskKey } from '../../src/log/kiosk';
import { putStored } from '../journeys/stored';

const child = 'wren';

/** Puts a household of one child into the open app's store, and the device into the child's hands. */
export async function moveIn(page: Page, changes: Partial<ChildSettings>): Promise<void> {
  const stamp = (seq: number) => ({ id: `made-${seq}`, v: 1, seq, device: 'bench', at: 0 });
  const records: readonly LogRecord[] = [
    { ...stamp(1), kind: 'childAdded', child, name: 'Wren', edge: 0 },
    { ...stamp(2), kind: 'setStarted', child, set: 'times-7' },
    { ...stamp(3), kind: 'childSettingsChanged', child, changes },
  ];
  for (const record of records) await putStored(page, keyOf(record), record);
  await putStored(page, headKey, { ...firstHead, seq: records.length });
  await putStored(page, kioskKey, child);
  await page.reload();
  await page.locator('main h1').first().waitFor({ state: 'attached' });
}
