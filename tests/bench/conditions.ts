import type { CDPSession, Page } from 'playwright';

/** What else the page has to do while cards are answered. */
export type Condition = 'idle' | 'busy' | 'tasks' | 'slow';

export const conditions: readonly Condition[] = ['idle', 'busy', 'tasks', 'slow'];

export const conditionNames: Readonly<Record<Condition, string>> = {
  idle: 'idle',
  busy: '12 ms busy in every frame',
  tasks: '50 ms tasks at random',
  slow: 'processor slowed 4×',
};

/** Puts a page under a condition until it goes. */
export async function under(condition: Condition, page: Page, cdp: CDPSession): Promise<void> {
  if (condition === 'slow') await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  if (condition === 'busy' || condition === 'tasks')
    await page.evaluate((kind) => {
      const work = (ms: number) => {
        const untilMs = performance.now() + ms;
        while (performance.now() < untilMs);
      };
      const inFrame = () => {
        work(12);
        requestAnimationFrame(inFrame);
      };
      const inTask = () => {
        work(50);
        setTimeout(inTask, 300 * Math.random());
      };
      (kind === 'busy' ? inFrame : inTask)();
    }, condition);
}
