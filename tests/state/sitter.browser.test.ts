import { describe, expect, test } from 'vitest';
import { openJournals } from '../../src/log/journal';
import { readHistory } from '../../src/log/lots';
import {
  answer,
  childDrafts,
  goTo,
  type Home,
  logOf,
  on,
  openHome,
  sats,
  settled,
  sitAll,
  takeStep,
} from './a-home';
import { fakePorts, morningOf } from './fake-ports';

const ann = childDrafts('ann', 'Ann');

/** Ann in mid-sheet, with two of five answered. */
async function midSheet(records = ann): Promise<Home> {
  const home = await openHome({ records });
  home.app.kiosk.pick('ann');
  goTo(home, 'sheet');
  home.app.kiosk.goOn(on(home, 'next').step);
  for (const _ of [1, 2]) answer(on(home, 'sitting').run, home.ports);
  await settled(home);
  return home;
}

describe('while a sheet is sat', () => {
  test('every answer is in the journal, one by one', async () => {
    const home = await midSheet();
    const log = await logOf(home);
    const [two] = await openJournals(log);
    expect(two?.visits).toMatchObject([
      { place: 0, end: 'taken', took: 'done' },
      { place: 1, end: 'taken', took: 'done' },
    ]);
    answer(on(home, 'sitting').run, home.ports, 'wrong');
    await settled(home);
    expect((await openJournals(log))[0]?.visits).toHaveLength(3);
    const sealed = (await readHistory(log)).flatMap((one) => (one.kind === 'sat' ? [one.purpose] : []));
    expect(sealed).toEqual(['practice', 'firstTry']);
  });

  test('finishing seals the journal into one record under the same id', async () => {
    const home = await midSheet();
    const log = await logOf(home);
    const [open] = await openJournals(log);
    sitAll(home);
    await settled(home);
    expect(await openJournals(log)).toEqual([]);
    const sheet = (await sats(home, 'ann')).find(({ purpose }) => purpose === 'sheet');
    expect(sheet).toMatchObject({
      id: open?.id,
      ended: 'finished',
      day: '2026-03-02',
      zone: 'Europe/Dublin',
    });
    expect(sheet?.visits).toHaveLength(5);
  });

  test('the day is shown as done before the disk has the record', async () => {
    const home = await midSheet();
    sitAll(home);
    expect(home.app.kiosk.screen.value.on).toBe('piece');
    expect(home.app.desk.storage.value.waiting).toBeGreaterThan(0);
  });

  test('a sitting of which nothing was answered leaves no record and no journal', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    takeStep(home);
    home.app.kiosk.goOn(on(home, 'next').step);
    const { run } = on(home, 'sitting');
    run.shown(run.card.value.showing, home.ports.monotonic(), 'element');
    home.app.kiosk.openGrownUps();
    await home.app.desk.openStop('ann');
    home.app.kiosk.closeGrownUps();
    expect(on(home, 'next').step.what).toBe('practice');
    expect(await sats(home, 'ann')).toEqual([]);
    expect(await openJournals(await logOf(home))).toEqual([]);
  });

  test('past midnight the sitting belongs to its start', async () => {
    const home = await midSheet();
    home.ports.pass(16 * 3_600_000);
    sitAll(home);
    await settled(home);
    const days = (await sats(home, 'ann')).map(({ day }) => day);
    expect(days).toEqual(['2026-03-02', '2026-03-02', '2026-03-02']);
    expect(home.app.desk.today.value).toBe('2026-03-03');
  });
});

describe('broken off', () => {
  test('today’s stands open again at the same card, and is one record in the end', async () => {
    const home = await midSheet();
    const { prompt } = on(home, 'sitting').run.card.value;
    home.ports.pass(60_000);
    const reloaded = await openHome(home);
    expect(on(reloaded, 'away').child.id).toBe('ann');
    reloaded.app.kiosk.carryOn();
    expect(on(reloaded, 'sitting').run.card.value.prompt).toBe(prompt);
    sitAll(reloaded);
    const sheet = (await sats(reloaded, 'ann')).find(({ purpose }) => purpose === 'sheet');
    expect(sheet).toMatchObject({ ended: 'finished', away: [{ why: 'torn', afterVisits: 2 }] });
    expect(sheet?.visits.map(({ place }) => place)).toEqual([0, 1, 2, 3, 4]);
    const onsets = sheet?.visits.map(({ onsetMs }) => onsetMs ?? 0) ?? [];
    expect(onsets).toEqual(onsets.toSorted((x, y) => x - y));
  });

  test('again and again, it loses nothing', async () => {
    let home = await midSheet();
    for (const _ of [1, 2]) {
      home = await openHome(home);
      home.app.kiosk.carryOn();
      answer(on(home, 'sitting').run, home.ports);
      await settled(home);
    }
    home = await openHome(home);
    home.app.kiosk.carryOn();
    sitAll(home);
    const sheet = (await sats(home, 'ann')).find(({ purpose }) => purpose === 'sheet');
    expect(sheet?.visits.filter(({ end }) => end === 'taken').map(({ place }) => place)).toEqual([
      0, 1, 2, 3, 4,
    ]);
    expect(sheet?.away).toHaveLength(3);
  });

  test('yesterday’s is sealed as it was, on its own day', async () => {
    const home = await midSheet();
    const today = await openHome({ name: home.name, ports: fakePorts('2026-03-03') });
    expect(today.app.kiosk.isBetween.value).toBe(true);
    const sheet = (await sats(today, 'ann')).find(({ purpose }) => purpose === 'sheet');
    expect(sheet).toMatchObject({ day: '2026-03-02', ended: 'torn' });
    expect(sheet?.visits).toHaveLength(2);
    expect(await openJournals(await logOf(today))).toEqual([]);
    expect(on(today, 'next').step.what).toBe('practice');
  });

  test('a sheet whose last answer was kept, but not its sealing, is sealed as finished', async () => {
    const home = await midSheet();
    for (const _ of [3, 4]) answer(on(home, 'sitting').run, home.ports);
    await settled(home);
    const log = await logOf(home);
    const [open] = await openJournals(log);
    const last = { ...open?.visits[3], place: 4 };
    await log.store('readwrite', async (store) => {
      store.put({ what: 'visit', id: open?.id, index: 4, visit: last }, `journal/${open?.id}/visit/000004`);
    });
    const reloaded = await openHome(home);
    expect(reloaded.app.kiosk.isBetween.value).toBe(true);
    expect((await sats(reloaded, 'ann'))[1]).toMatchObject({ ended: 'finished' });
  });

  test('what was answered before stands beside a mending taken up again', async () => {
    const home = await midSheet();
    sitAll(home, () => 'wrong');
    home.app.kiosk.leavePiece();
    const { wrote } = on(home, 'sitting').run.card.value;
    expect(wrote).not.toBeNull();
    answer(on(home, 'sitting').run, home.ports);
    const second = on(home, 'sitting').run.card.value.wrote;
    await settled(home);
    const reloaded = await openHome(home);
    reloaded.app.kiosk.carryOn();
    expect(on(reloaded, 'sitting').run.card.value.wrote).toBe(second);
  });

  test('with the device’s clock set back meanwhile, its times still run forward', async () => {
    const home = await midSheet();
    home.ports.setWallClock(morningOf('2026-03-02') - 3_600_000);
    const reloaded = await openHome(home);
    reloaded.app.kiosk.carryOn();
    sitAll(reloaded);
    const sheet = (await sats(reloaded, 'ann')).find(({ purpose }) => purpose === 'sheet');
    const times = sheet?.visits.flatMap(({ onsetMs, endMs }) => [onsetMs ?? 0, endMs ?? 0]) ?? [];
    expect(times).toEqual(times.toSorted((x, y) => x - y));
  });
});

describe('without times', () => {
  test('none is stored, neither in the journal nor in the record', async () => {
    const home = await midSheet([
      ...ann,
      { kind: 'childSettingsChanged', child: 'ann', changes: { keepTimes: false } },
    ]);
    const midnight = morningOf('2026-03-02') - 10 * 3_600_000;
    const log = await logOf(home);
    const [open] = await openJournals(log);
    expect(open?.start.startedAt).toBe(midnight);
    for (const visit of open?.visits ?? []) {
      expect(visit).toMatchObject({ onsetMs: null, endMs: null });
      expect(visit.keys.every(([, atMs]) => atMs === null)).toBe(true);
    }
    sitAll(home);
    for (const sat of await sats(home, 'ann')) {
      expect(sat).toMatchObject({ at: midnight, startedAt: midnight, endedMs: null });
      expect(JSON.stringify(sat.visits)).not.toMatch(/Ms":\d/);
    }
  });
});
