import type { Page } from '../journeys/browser';
import { tasksSince } from './long-tasks';

/** What opening a page took: until the last thing on it came, and the longest task on the way (0: none over 50 ms); ms. */
export interface Opening {
  readonly ms: number;
  readonly longestTask: number;
  readonly tasks: number;
}

/** So long without a change a page has come to rest. */
const restMs = 400;

/** Presses a button and waits until the page below has come to rest. */
export async function openingBy(page: Page, button: string, nth = 0): Promise<Opening> {
  const { began, ended } = await page.evaluate(
    async ({ name, at, rest }) => {
      const named = [...document.querySelectorAll<HTMLElement>('button, label')].filter(
        (one) => one.textContent?.trim() === name,
      );
      const wanted = named[at];
      if (!wanted) throw new Error(`There is no “${name}”.`);
      let last = performance.now();
      const watch = new MutationObserver(() => {
        last = performance.now();
      });
      watch.observe(document.body, { childList: true, subtree: true, characterData: true });
      const start = performance.now();
      last = start;
      wanted.click();
      while (
        performance.now() - last < rest ||
        document.querySelector('main.page [role="status"]')?.textContent?.includes('…')
      )
        await new Promise((resolve) => setTimeout(resolve, 20));
      watch.disconnect();
      return { began: start, ended: last };
    },
    { name: button, at: nth, rest: restMs },
  );
  const tasks = await tasksSince(page, began);
  return { ms: ended - began, longestTask: Math.max(0, ...tasks), tasks: tasks.length };
}
