import { signal } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { CardScreen } from '../../src/child/card-screen';
import '../../src/ui/tokens.css';

afterEach(cleanup);

const none = () => {};

/** The smaller side of the smallest key on a screen of this size, px. */
async function smallestKeyPx(width: number, height: number, layout: 'across' | 'stacked'): Promise<number> {
  await page.viewport(width, height);
  render(
    <CardScreen
      face={signal({ showing: 1, prompt: 'mul-7-8', whole: false, wrote: null })}
      entry={signal('')}
      layout={layout}
      order="phone"
      hand="right"
      clock={{ allowanceMs: 45_000, elapsedMs: 0, running: false }}
      rang={signal(false)}
      onKey={none}
      onShown={none}
      onGrownUps={none}
    />,
  );
  const sides = [...document.querySelectorAll('.key')].flatMap((key) => {
    const { width: across, height: down } = key.getBoundingClientRect();
    return [across, down];
  });
  expect(sides).toHaveLength(2 * 13);
  cleanup();
  return Math.min(...sides);
}

/** Tablets by their diagonal and what a page sees of them: the longer and the shorter side, px. */
const tablets = [
  { inches: 13, long: 1366, short: 1024 },
  { inches: 11, long: 1194, short: 834 },
  { inches: 10.5, long: 1112, short: 834 },
  { inches: 10.2, long: 1080, short: 810 },
  { inches: 10.1, long: 1280, short: 800 },
  { inches: 9.7, long: 1024, short: 768 },
] as const;

const millimetres = (px: number, pxPerInch: number) => (px / pxPerInch) * 25.4;

describe('a key', () => {
  // Least size of number keys: Duff et al. 2010.
  it.each(tablets)(
    'is 20 mm and more each way on a tablet of $inches inches, $long by $short',
    async (tablet) => {
      const { inches, long, short } = tablet;
      const pxPerInch = Math.hypot(long, short) / inches;
      for (const layout of ['across', 'stacked'] as const) {
        for (const [width, height] of [
          [long, short],
          [short, long],
        ] as const) {
          const sizeMm = millimetres(await smallestKeyPx(width, height, layout), pxPerInch);
          expect(sizeMm, `${width} by ${height}, ${layout}`).toBeGreaterThanOrEqual(20);
        }
      }
    },
  );

  it('is 20 mm and more on a ten-inch tablet of 160 px to the inch, the densest of its class', async () => {
    // 1280 by 800 px at 160 to the inch, less what a browser or the system keeps of either side.
    for (const [width, height] of [
      [1280, 800],
      [1280, 720],
      [800, 1280],
      [800, 1180],
    ] as const) {
      const sizeMm = millimetres(await smallestKeyPx(width, height, 'across'), 160);
      expect(sizeMm, `${width} by ${height}`).toBeGreaterThanOrEqual(20);
    }
  });

  it('is 48 px and more each way on a phone of 390 by 844, upright or on its side', async () => {
    for (const layout of ['across', 'stacked'] as const) {
      expect(await smallestKeyPx(390, 844, layout)).toBeGreaterThanOrEqual(48);
      expect(await smallestKeyPx(844, 390, layout)).toBeGreaterThanOrEqual(48);
    }
  });
});
