import { describe, expect, test } from 'vitest';
import {
  answer,
  childDrafts,
  goTo,
  goToRest,
  type Home,
  on,
  openHome,
  sats,
  settled,
  sitAll,
  takeStep,
} from './a-home';
import { morningOf } from './fake-ports';

const ann = childDrafts('ann', 'Ann');
const bo = childDrafts('bo', 'Bo');

/** What is up: the screen, and at *Next* the step. */
function up({ app }: Home): string {
  const screen = app.kiosk.screen.value;
  return screen.on === 'next' ? `next: ${screen.step.what}` : screen.on;
}

describe('who comes first', () => {
  test('a household without children is welcomed', async () => {
    expect(up(await openHome())).toBe('welcome');
  });

  test('with children it is asked whose cloth it is, also with one child, until the device is given to it', async () => {
    const home = await openHome({ records: ann });
    expect(on(home, 'whose').children.map(({ child }) => child.name)).toEqual(['Ann']);
    home.app.kiosk.pick('ann');
    expect(up(home)).toBe('next: told');
  });

  test('an archived child is not asked for, and a device given to it asks again', async () => {
    const home = await openHome({ records: [...ann, ...bo] });
    home.app.kiosk.pick('bo');
    await home.app.desk.record([{ kind: 'childChanged', child: 'bo', archived: true }]);
    expect(on(home, 'whose').children.map(({ child }) => child.id)).toEqual(['ann']);
  });

  test('the device stays with its child over a reload', async () => {
    const home = await openHome({ records: [...ann, ...bo] });
    home.app.kiosk.pick('bo');
    await settled(home);
    expect(on(await openHome(home), 'next').child.name).toBe('Bo');
  });
});

describe('a first day', () => {
  test('told, copies, first try, what is yours, sheet, piece, mending, its twin, copies, the piece whole, rest', async () => {
    const home = await openHome({ records: ann });
    const { kiosk } = home.app;
    kiosk.pick('ann');
    expect(takeStep(home)).toBe('told');
    expect(takeStep(home)).toBe('practice');
    expect(takeStep(home)).toBe('firstTry');
    expect(on(home, 'yours').facts).toHaveLength(17);
    kiosk.leaveYours();
    goTo(home, 'sheet');
    takeStep(home, (card) => (card === 1 ? 'wrong' : 'right'));
    expect(on(home, 'piece').day.isDone).toBe(false);
    kiosk.leavePiece();
    expect(on(home, 'sitting').run.plan.purpose).toBe('mending');
    sitAll(home);
    expect(takeStep(home)).toBe('twin');
    expect(takeStep(home)).toBe('practice');
    expect(on(home, 'piece').day.isDone).toBe(true);
    kiosk.leavePiece();
    expect(on(home, 'rest').following).toBeNull();
    expect(home.sounds.at(-1)).toBe('finished');
    expect(home.sounds.filter((sound) => sound === 'finished')).toHaveLength(1);
    const purposes = (await sats(home, 'ann')).map(({ purpose }) => purpose);
    expect(purposes).toEqual(['practice', 'firstTry', 'sheet', 'mending', 'mending', 'practice']);
  });

  test('where cards are the child’s choice they come first, or it goes straight to the sheet', async () => {
    const home = await openHome({ records: childDrafts('ann', 'Ann', { cards: true }) });
    const { kiosk } = home.app;
    kiosk.pick('ann');
    goTo(home, 'cards');
    expect(on(home, 'next').step).toMatchObject({ what: 'cards', isChoice: true });
    kiosk.goStraight();
    expect(on(home, 'sitting').run.plan.purpose).toBe('sheet');
    sitAll(home);
    goToRest(home);
    expect((await sats(home, 'ann')).map(({ purpose }) => purpose)).not.toContain('cards');
  });

  test('one more sheet is sat at the child’s own wish, as a second one', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    goToRest(home);
    home.app.kiosk.again();
    expect(on(home, 'sitting').run.plan).toMatchObject({ purpose: 'sheet', second: true });
    sitAll(home);
    expect(on(home, 'piece').day.sheets).toHaveLength(2);
  });

  test('being told is remembered within the page, and for good once something was sat', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    takeStep(home);
    await settled(home);
    const reloaded = await openHome(home);
    expect(up(reloaded)).toBe('next: told');
    takeStep(reloaded);
    takeStep(reloaded);
    await settled(reloaded);
    expect(up(await openHome(reloaded))).toBe('next: firstTry');
  });

  test('a tap that comes twice begins one sitting', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    takeStep(home);
    const { step } = on(home, 'next');
    home.app.kiosk.goOn(step);
    const { run } = on(home, 'sitting');
    home.app.kiosk.goOn(step);
    expect(on(home, 'sitting').run).toBe(run);
  });

  test('without a set there is nothing to sit: a grown-up is asked for', async () => {
    const home = await openHome({ records: ann.slice(0, 1) });
    home.app.kiosk.pick('ann');
    expect(up(home)).toBe('ask');
    await settled(home);
    const reloaded = await openHome(home);
    expect(up(reloaded)).toBe('ask');
    await reloaded.app.desk.record([{ kind: 'setStarted', child: 'ann', set: 'times-3' }]);
    expect(up(reloaded)).toBe('next: told');
  });

  test('on a day that is skipped the child rests', async () => {
    const home = await openHome({ records: ann });
    const day = home.app.desk.today.value;
    await home.app.desk.record([{ kind: 'dayChanged', child: 'ann', day, change: { skip: true } }]);
    home.app.kiosk.pick('ann');
    expect(up(home)).toBe('rest');
  });

  test('a timed sheet with too few right goes on through its rows to what is still to mend', async () => {
    const home = await openHome({ records: childDrafts('ann', 'Ann', { timed: true }) });
    home.app.kiosk.pick('ann');
    goTo(home, 'sheet');
    takeStep(home, () => 'wrong');
    expect(up(home)).toBe('piece');
    home.app.kiosk.leavePiece();
    const firstWrong = (card: number) => (card === 0 ? 'wrong' : 'right');
    expect(takeStep(home, firstWrong)).toBe('row');
    expect(takeStep(home, firstWrong)).toBe('row');
    expect(takeStep(home)).toBe('mending');
    goTo(home, 'piece');
    expect(on(home, 'rest').day.isDone).toBe(true);
  });
});

describe('a grown-up in between', () => {
  test('from the next step and back to it', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    home.app.kiosk.openGrownUps();
    expect(up(home)).toBe('grownUps');
    expect(home.app.kiosk.isBetween.value).toBe(false);
    home.app.kiosk.closeGrownUps();
    expect(up(home)).toBe('next: told');
    expect(home.app.kiosk.isBetween.value).toBe(true);
  });

  test('from mid-sheet and back to the same card, which waits to be taken up', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    takeStep(home);
    home.app.kiosk.goOn(on(home, 'next').step);
    const { run } = on(home, 'sitting');
    answer(run, home.ports);
    const { prompt } = run.card.value;
    home.app.kiosk.openGrownUps();
    expect(up(home)).toBe('grownUps');
    home.app.kiosk.closeGrownUps();
    expect(up(home)).toBe('away');
    expect(home.app.kiosk.isBetween.value).toBe(false);
    home.app.kiosk.carryOn();
    expect(on(home, 'sitting').run.card.value.prompt).toBe(prompt);
    sitAll(home);
    const [practice] = await sats(home, 'ann');
    expect(practice?.away).toMatchObject([{ why: 'stopped', afterVisits: 1 }]);
  });

  test('may stop the sheet: what was answered stays', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    goTo(home, 'sheet');
    home.app.kiosk.goOn(on(home, 'next').step);
    answer(on(home, 'sitting').run, home.ports);
    home.app.kiosk.openGrownUps();
    expect(home.app.desk.sitting.value).toEqual(new Set(['ann']));
    await home.app.desk.openStop('ann');
    expect(home.app.desk.sitting.value).toEqual(new Set());
    const sheet = (await sats(home, 'ann')).find(({ purpose }) => purpose === 'sheet');
    expect(sheet?.ended).toBe('stopped');
    expect(sheet?.visits.filter(({ end }) => end === 'taken')).toHaveLength(1);
  });

  test('hands over to a child, or to whoever’s turn it is', async () => {
    const home = await openHome({ records: [...ann, ...bo] });
    home.app.kiosk.openGrownUps();
    home.app.desk.handOver('bo');
    expect(on(home, 'next').child.id).toBe('bo');
    home.app.kiosk.openGrownUps();
    home.app.desk.handOver(null);
    expect(up(home)).toBe('whose');
  });
});

describe('the device goes round', () => {
  async function restingAnn(): Promise<Home> {
    const home = await openHome({ records: [...ann, ...bo] });
    home.app.kiosk.pick('ann');
    goToRest(home);
    return home;
  }

  test('from a child that is done to the one that is not, then to nobody', async () => {
    const home = await restingAnn();
    expect(on(home, 'rest').following?.id).toBe('bo');
    home.app.kiosk.handOver();
    expect(on(home, 'handOver').to.id).toBe('bo');
    home.app.kiosk.pick('bo');
    goToRest(home);
    expect(on(home, 'rest').following).toBeNull();
    home.app.kiosk.handOver();
    expect(on(home, 'whose').children.map(({ isDone }) => isDone)).toEqual([true, true]);
  });

  test('a child that was taken for another goes back to whose cloth it is, its sheet waiting for it', async () => {
    const home = await openHome({ records: [...ann, ...bo] });
    home.app.kiosk.pick('ann');
    takeStep(home);
    home.app.kiosk.goOn(on(home, 'next').step);
    answer(on(home, 'sitting').run, home.ports);
    home.app.kiosk.openGrownUps();
    home.app.kiosk.closeGrownUps();
    home.app.kiosk.notMe();
    expect(up(home)).toBe('whose');
    home.app.kiosk.pick('bo');
    expect(up(home)).toBe('next: told');
    home.app.kiosk.pick('ann');
    expect(up(home)).toBe('away');
  });

  test('handing over can be thought better of', async () => {
    const home = await restingAnn();
    home.app.kiosk.handOver();
    home.app.kiosk.goBack();
    expect(on(home, 'rest').child.id).toBe('ann');
  });

  test('one child alone is never taken for another', async () => {
    expect((await openHome({ records: ann })).app.kiosk.hasOthers.value).toBe(false);
    expect((await openHome({ records: [...ann, ...bo] })).app.kiosk.hasOthers.value).toBe(true);
  });

  test('the long cloth opens from the rest and closes to it', async () => {
    const home = await restingAnn();
    home.app.kiosk.openCloth();
    expect(up(home)).toBe('cloth');
    home.app.kiosk.goBack();
    expect(up(home)).toBe('rest');
  });

  test('a new day brings a new sheet to a device left at rest', async () => {
    const home = await restingAnn();
    home.ports.setWallClock(morningOf('2026-03-03'));
    home.ports.pass(30_000);
    expect(up(home)).toBe('next: sheet');
  });

  test('what was missed and never mended begins the next day', async () => {
    const home = await openHome({ records: ann });
    home.app.kiosk.pick('ann');
    goTo(home, 'sheet');
    takeStep(home, () => 'skip');
    home.ports.setWallClock(morningOf('2026-03-03'));
    home.app.kiosk.pick('ann');
    expect(up(home)).toBe('next: mending');
  });
});

test('a new version may be taken only while nobody is in a sitting', async () => {
  const home = await openHome({ records: ann });
  home.app.kiosk.pick('ann');
  takeStep(home);
  expect(home.app.kiosk.isBetween.value).toBe(true);
  home.app.kiosk.goOn(on(home, 'next').step);
  expect(home.app.kiosk.isBetween.value).toBe(false);
  sitAll(home);
  expect(home.app.kiosk.isBetween.value).toBe(true);
});
