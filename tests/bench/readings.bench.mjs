import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
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
  const { householdOf, sizeOf, timesOf } = await import(pathToFileURL(bundle).href);
  const records = householdOf(years);
  const size = sizeOf(records);
  const inNode = timesOf(records, runs);
  const inBrowser = await timesInBrowser(readFileSync(bundle, 'utf8'));
  const found = { years, runs, ...size, node: told(inNode), chromium: told(inBrowser) };
  console.log(
    `${size.sheets} sheets, ${size.rows} rows, ${size.answers} answers; ms, of ${runs} readings after the first:`,
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
    return await page.evaluate(
      async ({ source, years, runs }) => {
        const url = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }));
        const { householdOf, timesOf } = await import(/* @vite-ignore */ url);
        return timesOf(householdOf(years), runs);
      },
      { source, years, runs },
    );
  } finally {
    await browser.close();
  }
}

/** @param {{ firstMs: number, timesMs: readonly number[] }} times */
function told({ firstMs, timesMs }) {
  const sorted = timesMs.toSorted((x, y) => x - y);
  const whole = (/** @type {number | undefined} */ ms) => Math.round(ms ?? Number.NaN);
  const [median, least, most] = [sorted[sorted.length >> 1], sorted[0], sorted.at(-1)].map(whole);
  return { first: whole(firstMs), median, least, most };
}
