import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright';
import { build } from 'vite';
import { CHROMIUM_FLAGS, ensureChromium } from '../../setup/chromium.mjs';

// What the whole reading of six children's ten years takes, in Node and in Chromium, on this machine as it is now.
const root = join(import.meta.dirname, '../..');
const { values } = parseArgs({
  options: { json: { type: 'string' }, runs: { type: 'string', default: '5' } },
});
const years = 10;
const runs = Number(values.runs);

const folder = mkdtempSync(join(tmpdir(), 'readings-bench-'));
try {
  const bundle = await bundled();
  const { householdOf, sizeOf, readerOf } = await import(pathToFileURL(bundle).href);
  const records = householdOf(years);
  const size = sizeOf(records);
  const inNode = await timesOf(readerOf(records), () => process.cpuUsage().user / 1000);
  const inBrowser = await timesInBrowser(readFileSync(bundle, 'utf8'));
  const found = { years, runs, load: loadavg()[0], ...size, node: told(inNode), chromium: told(inBrowser) };
  console.log(
    `${size.sheets} sheets, ${size.rows} rows, ${size.answers} answers; load average ${found.load?.toFixed(1)}; ms, then of ${runs} more:`,
  );
  console.table({ Node: found.node, Chromium: found.chromium });
  if (values.json) writeFileSync(values.json, `${JSON.stringify(found, null, 1)}\n`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function bundled() {
  await build({
    configFile: false,
    root,
    publicDir: false,
    logLevel: 'warn',
    build: {
      outDir: folder,
      emptyOutDir: true,
      target: 'es2023',
      lib: {
        entry: join(import.meta.dirname, 'household-of-years.ts'),
        formats: ['es'],
        fileName: () => 'bench.mjs',
      },
    },
  });
  return join(folder, 'bench.mjs');
}

/** @param {string} source */
async function timesInBrowser(source) {
  const browser = await chromium.launch({
    executablePath: ensureChromium(),
    chromiumSandbox: false,
    args: CHROMIUM_FLAGS,
  });
  try {
    const page = await browser.newPage();
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
    const read = await page.evaluateHandle(
      async ({ source, years }) => {
        const url = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }));
        const { householdOf, readerOf } = await import(/* @vite-ignore */ url);
        return readerOf(householdOf(years));
      },
      { source, years },
    );
    return await timesOf(
      () => read.evaluate((readOnce) => readOnce()),
      async () => {
        const { metrics } = await cdp.send('Performance.getMetrics');
        return 1000 * (metrics.find(({ name }) => name === 'ThreadTime')?.value ?? Number.NaN);
      },
    );
  } finally {
    await browser.close();
  }
}

/**
 * The first reading and `runs` more: by the clock, and by what the processor spent on them, which other work on the
 * machine moves far less.
 * @param {() => number | Promise<number>} readOnce
 * @param {() => number | Promise<number>} spentMs
 */
async function timesOf(readOnce, spentMs) {
  const times = [];
  for (let run = 0; run <= runs; run += 1) {
    const before = await spentMs();
    const clock = await readOnce();
    times.push({ clock, processor: (await spentMs()) - before });
  }
  return times;
}

/** @param {readonly { readonly clock: number, readonly processor: number }[]} times */
function told([first, ...then]) {
  const whole = (/** @type {number | undefined} */ ms) => Math.round(ms ?? Number.NaN);
  const spread = (/** @type {'clock' | 'processor'} */ by) => {
    const [median, least, most] = [then.length >> 1, 0, then.length - 1].map(
      (at) => then.map((time) => time[by]).toSorted((x, y) => x - y)[at],
    );
    return `${whole(median)} (${whole(least)}–${whole(most)})`;
  };
  return {
    'first, clock': whole(first?.clock),
    'then, clock': spread('clock'),
    'first, processor': whole(first?.processor),
    'then, processor': spread('processor'),
  };
}
