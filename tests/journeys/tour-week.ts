import { words } from '../../src/child/words';
import { keyHand, nextCard, sit } from './child-hand';
import { type Device, openDevice } from './device';
import { beginSheet, finishDay, goTo } from './morning';
import {
  addChild,
  choosePin,
  fill,
  handOver,
  heading,
  openPages,
  press,
  seeHeading,
  turnTo,
  turnToSettingsOf,
} from './parent-hand';
import type { Look } from './tour';

/** A week of short sheets: the screens that a first day does not bring. */
export async function tourWeek(look: Look): Promise<void> {
  const tuesday = await openDevice();
  await choosePin(tuesday.page);
  await addChild(tuesday.page, 'Juniper');
  await beginSpread(tuesday, look);
  await makeDaysShort(tuesday);
  await seeChoice(tuesday, look);
  await finish(tuesday, 'Teo');
  await tuesday.close();
  const wednesday = await openDevice({ again: tuesday, daysOn: 1 });
  await finish(wednesday, 'Juniper');
  await finish(wednesday, 'Teo');
  await wednesday.close();
  const thursday = await openDevice({ again: tuesday, daysOn: 2 });
  await seeLookBack(thursday, look);
  await seeAsking(thursday, look);
  await thursday.close();
  const saturday = await openDevice({ again: tuesday, daysOn: 4 });
  await press(saturday.page, 'Juniper');
  await seeHeading(saturday.page, words.free);
  await look(saturday, 'child-holiday');
  await saturday.close();
}

/** Sheets of five, a set to look back on, and a look-back in place of every third sheet. */
async function makeDaysShort({ page }: Device): Promise<void> {
  await turnTo(page, 'Children and sets');
  await page.getByRole('navigation', { name: 'Child' }).getByRole('button', { name: 'Juniper' }).click();
  const picker = page.locator('details').filter({ hasText: 'Keep another set in practice' });
  await picker.locator('summary').click();
  await picker.getByLabel('Multiplication', { exact: true }).check();
  await picker
    .getByRole('radio', { name: /^Times 2/ })
    .first()
    .check();
  await press(page, /^Keep “Times 2” in practice/);
  await turnToSettingsOf(page, 'Juniper');
  await fill(page, 'Length of a sheet', '5');
  await press(page, 'Keep these numbers');
  await page.getByText('Kept.').first().waitFor();
  await page.getByLabel('A look-back takes the place of', { exact: true }).selectOption('3');
  await handOver(page, 'Juniper');
}

/** All of the first try right, so that there is nothing to teach and the cards are the child's to choose. */
async function seeChoice(device: Device, look: Look): Promise<void> {
  const { page } = device;
  await goTo(page, () => keyHand(device), words.choice);
  await look(device, 'child-choice');
  await press(page, words.cardsFirst);
  await nextCard(page, null);
  await look(device, 'child-card-warm-up');
  await sit(page, await keyHand(device));
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device));
  await finishDay(page, () => keyHand(device));
  await look(device, 'child-rest-again');
  await press(page, words.again);
  await nextCard(page, null);
  await sit(page, await keyHand(device));
  await finishDay(page, () => keyHand(device));
}

/** A child's whole day, all right, and back to the stack of cloths. */
async function finish({ page, cdp }: Device, child: string): Promise<void> {
  const hand = () => keyHand({ page, cdp });
  if ((await heading(page)) === words.resting) await press(page, 'Hand over');
  await press(page, child);
  await beginSheet(page, hand);
  await sit(page, await hand());
  await finishDay(page, hand);
  await press(page, 'Hand over');
}

async function seeLookBack(device: Device, look: Look): Promise<void> {
  const { page } = device;
  await press(page, 'Juniper');
  await page.getByRole('button', { name: words.begin, exact: true }).waitFor();
  await goTo(page, () => keyHand(device), words.lookBack);
  await look(device, 'child-next-look-back');
  await press(page, 'Begin');
  await sit(page, await keyHand(device));
  await finishDay(page, () => keyHand(device));
  await press(page, 'Hand over');
}

/** A spread of two days for a second child; after it there is only a grown-up to ask. */
async function beginSpread(device: Device, look: Look): Promise<void> {
  const { page } = device;
  await press(page, 'Add another child');
  await fill(page, 'Name', 'Teo');
  await press(page, 'Go on');
  await page.getByLabel('It asks Teo a few facts from every set, on two days.').check();
  await look(device, 'setup-5-spread');
  await press(page, 'Go on');
  await seeHeading(page, 'Teo can begin');
  await look(device, 'setup-7-done-spread');
  await press(page, 'Go to the parent’s pages');
}

async function seeAsking(device: Device, look: Look): Promise<void> {
  const { page } = device;
  await press(page, 'Teo');
  await seeHeading(page, words.ask);
  await look(device, 'child-ask');
  await openPages(page);
  await look(device, 'pages-today-spread-sat');
  await press(page, 'Hand over: who is next?');
}
