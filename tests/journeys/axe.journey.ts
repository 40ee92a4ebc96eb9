import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import { closeDevices } from './device';
import { type Look, tourBoat, tourHome, tourTrouble } from './tour';
import { tourWeek } from './tour-week';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

afterEach(closeDevices);

test.each([
  ['at home', tourHome, 41],
  ['in a week of short sheets', tourWeek, 9],
  ['on the boat', tourBoat, 12],
  ['where nothing can be kept', tourTrouble, 3],
] as const)('axe finds nothing on any screen %s', async (_, tour, atLeast) => {
  const seen: string[] = [];
  const found: string[] = [];
  const look: Look = async ({ cdp, page }, name) => {
    seen.push(name);
    await page.evaluate(endMotion);
    // The page's policy lets no script of a test in, and none of anyone else's: so past it, by the debugger.
    await cdp.send('Runtime.evaluate', { expression: `${axe};0` });
    const { result } = await cdp.send('Runtime.evaluate', {
      expression:
        'axe.run(document).then(({ passes, violations }) => JSON.stringify({ passes, violations }))',
      awaitPromise: true,
    });
    const { passes, violations } = JSON.parse(String(result.value)) as Pick<
      AxeResults,
      'passes' | 'violations'
    >;
    // A page it could not look at would have nothing wrong with it either.
    expect(passes.length).toBeGreaterThan(5);
    for (const { id, nodes } of violations)
      found.push(
        `${name}: ${id}: ${nodes.map(({ target, failureSummary }) => `${target} ${failureSummary}`)}`,
      );
  };
  await tour(look);
  expect(found).toEqual([]);
  expect(seen.length).toBeGreaterThanOrEqual(atLeast);
});

/** Contrast is judged as it will be, not in the middle of a fade. */
function endMotion(): void {
  for (const animation of document.getAnimations()) {
    const { endTime } = animation.effect?.getComputedTiming() ?? {};
    if (typeof endTime === 'number' && endTime < 5000) animation.finish();
  }
}
