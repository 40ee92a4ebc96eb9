import { expect, test } from 'vitest';
import { append } from '../../src/log/append';
import { refreshCheckpoint } from '../../src/log/checkpoint';
import { answer, childDrafts, goToRest, logOf, on, openHome, sats, settled, takeStep } from './a-home';
import { fakePorts, morningOf } from './fake-ports';

const ann = childDrafts('ann', 'Ann');

/** Days of sheets, all right, from the second of March on. */
async function sitDays(many: number) {
  const home = await openHome({ records: ann });
  home.app.kiosk.pick('ann');
  for (let day = 0; day < many; day += 1) {
    home.ports.setWallClock(morningOf(dayOf(day)));
    home.app.kiosk.pick('ann');
    goToRest(home);
  }
  await settled(home);
  return home;
}

function dayOf(index: number): string {
  return `2026-03-${String(index + 2).padStart(2, '0')}`;
}

test('a day planned from a checkpoint and its tail is the day planned from everything', async () => {
  const home = await sitDays(7);
  const log = await logOf(home);
  const whole = await openHome({ name: home.name, ports: fakePorts(dayOf(7)) });
  const before = whole.app.desk.days.value.get('ann');
  await refreshCheckpoint(log, 'ann', 2);
  const kept = await openHome({ name: home.name, ports: fakePorts(dayOf(7)) });
  expect(kept.app.desk.days.value.get('ann')).toEqual(before);
  expect(before?.steps.map(({ what }) => what)).toEqual(['sheet', 'piece']);
});

test('an accurate set is known for one from behind the checkpoint too', async () => {
  const home = await openHome({
    records: [...ann, { kind: 'childSettingsChanged', child: 'ann', changes: { length: 25 } }],
  });
  home.app.kiosk.pick('ann');
  for (let day = 0; day < 5; day += 1) {
    home.ports.setWallClock(morningOf(dayOf(day)));
    home.app.kiosk.pick('ann');
    goToRest(home);
  }
  await settled(home);
  await refreshCheckpoint(await logOf(home), 'ann', 1);
  const later = await openHome({ name: home.name, ports: fakePorts(dayOf(6)) });
  expect(later.app.desk.days.value.get('ann')?.needs).toEqual([{ what: 'proposeClock' }]);
});

test('what another tab records is shown here, household and history alike', async () => {
  const home = await openHome({ records: ann });
  const other = await openHome({ name: home.name, ports: fakePorts() });
  other.app.kiosk.pick('ann');
  await other.app.desk.record([{ kind: 'childChanged', child: 'ann', name: 'Annie' }]);
  await expect.poll(() => home.app.desk.household.value.children[0]?.name).toBe('Annie');
  goToRest(other);
  await settled(other);
  await expect.poll(() => home.app.desk.days.value.get('ann')?.isDone).toBe(true);
});

test('a child that another tab adds can be given the device here', async () => {
  const home = await openHome({ records: ann });
  const log = await logOf(home);
  await append(log, childDrafts('bo', 'Bo'));
  await expect.poll(() => home.app.desk.household.value.children.length).toBe(2);
  home.app.kiosk.pick('bo');
  await expect.poll(() => home.app.kiosk.screen.value.on).toBe('next');
});

test('a ruling that voids today’s sheet brings it again, and undoing the ruling takes it away', async () => {
  const home = await sitDays(1);
  const sheet = (await sats(home, 'ann')).find(({ purpose }) => purpose === 'sheet');
  if (!sheet) throw new Error('no sheet');
  expect(home.app.desk.days.value.get('ann')?.isDone).toBe(true);
  const [ruled] = await home.app.desk.record([
    { kind: 'ruled', child: 'ann', target: sheet.id, targetDay: sheet.day, ruling: { what: 'void' } },
  ]);
  expect(on(home, 'next').step.what).toBe('sheet');
  await home.app.desk.undo(ruled?.id ?? '');
  expect(home.app.kiosk.screen.value.on).toBe('rest');
});

test('a ruling moves a sitting to the child that sat it', async () => {
  const home = await sitDays(1);
  await home.app.desk.record(childDrafts('bo', 'Bo'));
  const sheet = (await sats(home, 'ann')).find(({ purpose }) => purpose === 'sheet');
  if (!sheet) throw new Error('no sheet');
  const ruling = { what: 'wrongChild', child: 'bo' } as const;
  await home.app.desk.record([
    { kind: 'ruled', child: 'ann', target: sheet.id, targetDay: sheet.day, ruling },
  ]);
  await expect.poll(() => home.app.desk.days.value.get('bo')?.sheets.length).toBe(1);
  expect(home.app.desk.days.value.get('ann')?.sheets).toHaveLength(0);
});

test('the parent’s history is there while the desk is open, and grows with what is sat', async () => {
  const home = await openHome({ records: ann });
  expect(home.app.desk.history.value).toBeNull();
  await home.app.openDesk();
  expect(home.app.desk.history.value?.children.size).toBe(0);
  home.app.kiosk.pick('ann');
  goToRest(home);
  expect(home.app.desk.history.value?.children.get('ann')?.sittings.map(({ sat }) => sat.purpose)).toContain(
    'sheet',
  );
  home.app.closeDesk();
  expect(home.app.desk.history.value).toBeNull();
});

test('a change for today holds today and is gone tomorrow', async () => {
  const home = await sitDays(1);
  home.ports.setWallClock(morningOf(dayOf(1)));
  home.app.kiosk.pick('ann');
  await home.app.desk.record([
    { kind: 'dayChanged', child: 'ann', day: dayOf(1), change: { timed: true, length: 10 } },
  ]);
  const timedToday = home.app.desk.days.value.get('ann')?.steps.find(({ what }) => what === 'sheet');
  expect(timedToday).toMatchObject({ plan: { clock: { allowanceMs: 45_000 } } });
  home.ports.setWallClock(morningOf(dayOf(2)));
  home.app.kiosk.pick('ann');
  const plan = home.app.desk.days.value.get('ann')?.steps.find(({ what }) => what === 'sheet');
  expect(plan).toMatchObject({ plan: { clock: null } });
});

test('records of a later version are counted for the parent and left as they are', async () => {
  const home = await openHome({ records: ann });
  const log = await logOf(home);
  const later = { id: 'x-1', v: 9, seq: 50, device: 'x', at: 0, kind: 'songSung', child: 'ann' };
  await log.store('readwrite', async (store) => {
    store.put(later, 'home/000000000050-x-x-1');
  });
  const reloaded = await openHome(home);
  expect(reloaded.app.desk.storage.value.later).toBe(1);
  expect(reloaded.app.desk.household.value.children).toHaveLength(1);
  await reloaded.app.desk.record([{ kind: 'childChanged', child: 'ann', edge: 5 }]);
  const kept = await log.store('readonly', async (store) => {
    const request = store.get('home/000000000050-x-x-1');
    return new Promise((resolve) => {
      request.onsuccess = () => resolve(request.result);
    });
  });
  expect(kept).toEqual(later);
});

test('a deleted child is gone from the screen, and so is a sitting it had open', async () => {
  const home = await openHome({ records: [...ann, ...childDrafts('bo', 'Bo')] });
  home.app.kiosk.pick('ann');
  takeStep(home);
  home.app.kiosk.goOn(on(home, 'next').step);
  answer(on(home, 'sitting').run, home.ports);
  home.app.kiosk.openGrownUps();
  await home.app.desk.deleteChild('ann');
  home.app.kiosk.closeGrownUps();
  expect(on(home, 'whose').children.map(({ child }) => child.id)).toEqual(['bo']);
  expect(home.app.kiosk.isBetween.value).toBe(true);
  const reloaded = await openHome(home);
  expect(reloaded.app.desk.sitting.value.size).toBe(0);
  expect(reloaded.app.kiosk.isBetween.value).toBe(true);
});
