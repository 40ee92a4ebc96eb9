import { expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import type { HouseholdRecord } from '../../../src/core/record/household-record';
import type { Draft } from '../../../src/core/record/record';
import { defaultChildSettings, type SettingsChange } from '../../../src/core/record/settings';
import { story } from './made-records';

const settingsAfter = (...changes: readonly SettingsChange[]) =>
  foldHousehold(
    story<Draft>(
      { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 0 },
      ...changes.map((one) => ({ kind: 'childSettingsChanged', child: 'ann', changes: one }) as const),
    ) as HouseholdRecord[],
  ).children[0]?.settings;

test('a record that only says whether there are spoken checks still holds', () => {
  expect(settingsAfter({ spokenChecks: false })?.spokenEvery).toBe(0);
  expect(settingsAfter({ spokenChecks: true })?.spokenEvery).toBe(10);
  expect(settingsAfter({ spokenEvery: 20 }, { spokenChecks: false })?.spokenEvery).toBe(0);
  expect(settingsAfter({ spokenChecks: false }, { spokenEvery: 20 })?.spokenEvery).toBe(20);
  expect(settingsAfter({ spokenChecks: false, spokenEvery: 15 })?.spokenEvery).toBe(15);
});

test('nothing of the old setting is left in those that hold', () => {
  expect(settingsAfter({ spokenChecks: true, length: 10 })).toEqual({ ...defaultChildSettings, length: 10 });
});
