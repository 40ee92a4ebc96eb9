import type { Page } from 'playwright';
import { words } from '../../src/child/words';
import { type Hand, type Manner, sit } from './child-hand';
import { heading, press } from './parent-hand';
import { isCardUp } from './read-card';

const sheets: ReadonlySet<string> = new Set([
  words.sheet,
  words.threadSheet,
  words.bellSheet,
  words.lookBack,
]);

/** Most steps of one morning. */
const mostSteps = 30;

/** Goes through whatever comes before today's sheet, all right and past the cards; its first card is up then. */
export async function beginSheet(page: Page, hand: () => Promise<Hand>): Promise<string> {
  for (let steps = 0; steps < mostSteps; steps += 1) {
    const title = await heading(page);
    if (title === words.choice) {
      await press(page, words.straight);
      // Before a first timed sheet its keys are practised.
      await page.getByRole('heading', { name: words.choice }).waitFor({ state: 'detached' });
      if (await isCardUp(page)) return title;
      continue;
    }
    if (sheets.has(title)) {
      await press(page, words.begin);
      return title;
    }
    await passStep(page, title, hand);
  }
  throw new Error('The sheet does not come.');
}

/** Goes on, all right and past cards that may be left out, until a screen of that title is up. */
export async function goTo(page: Page, hand: () => Promise<Hand>, wanted: string): Promise<void> {
  for (let steps = 0; steps < mostSteps; steps += 1) {
    const title = await heading(page);
    if (title === wanted) return;
    if (title === words.choice) await press(page, words.straight);
    else await passStep(page, title, hand);
  }
  throw new Error(`No “${wanted}” comes.`);
}

/** From the piece to the end of the day, all right; gives the titles that came up on the way. */
export async function finishDay(page: Page, hand: () => Promise<Hand>): Promise<readonly string[]> {
  const titles: string[] = [];
  while (titles.length < mostSteps) {
    const title = await heading(page);
    if (title === words.resting) return titles;
    titles.push(title);
    await passStep(page, title, hand);
  }
  throw new Error('The day does not end.');
}

async function passStep(page: Page, title: string, hand: () => Promise<Hand>): Promise<void> {
  const manner: Manner = title === words.takesItself ? { takesItself: true } : {};
  const names = [words.ok, words.begin, words.mend, words.goOn];
  const seen = await Promise.all(
    names.map((name) => page.getByRole('button', { name, exact: true }).count()),
  );
  const name = names.find((_, index) => seen[index]);
  if (!name) throw new Error(`Nothing leads on from “${title}”.`);
  await press(page, name);
  if (await isCardUp(page)) await sit(page, await hand(), manner);
}
