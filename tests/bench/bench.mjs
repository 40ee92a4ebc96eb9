import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import preact from '@preact/preset-vite';
import { build } from 'vite';
import { ensureChromium } from '../../setup/chromium.mjs';
import { keptFiles } from '../../setup/kept-files.mjs';

// Everything that is promised of speed and exactness, measured on this machine as it is now: npm run bench -- PART...
const root = join(import.meta.dirname, '../..');
const parts = ['readings', 'weight', 'start', 'cards', 'growth', 'pages'];
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    json: { type: 'string' },
    rounds: { type: 'string', default: '3' },
    cards: { type: 'string', default: '60' },
  },
});
const wanted = positionals.length > 0 ? positionals : parts;
const strange = wanted.filter((part) => !parts.includes(part));
if (strange.length > 0) throw new Error(`There is ${parts.join(', ')}; no ${strange.join(', ')}.`);

ensureChromium();
const folder = mkdtempSync(join(tmpdir(), 'sumstitch-bench-'));
const out = join(folder, 'figures');
mkdirSync(out);
try {
  const app = join(folder, 'app');
  await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir: app, emptyOutDir: true },
  });
  await buildPage('floor');
  await buildPage('peer');
  if (wanted.includes('readings')) {
    const script = join(import.meta.dirname, 'readings.bench.mjs');
    execFileSync(process.execPath, [script, '--json', join(out, 'readings.json')], { stdio: 'inherit' });
  }
  const files = wanted.filter((part) => part !== 'readings').map((part) => `tests/bench/${part}.bench.ts`);
  if (files.length > 0) {
    execFileSync(
      process.execPath,
      [join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--project', 'bench', ...files],
      {
        cwd: root,
        stdio: 'inherit',
        env: {
          ...process.env,
          BUILT: app,
          BENCH_PAGES: join(folder, 'pages'),
          BENCH_OUT: out,
          BENCH_ROUNDS: values.rounds,
          BENCH_CARDS: values.cards,
        },
      },
    );
  }
} finally {
  if (values.json) writeFileSync(values.json, `${JSON.stringify(collected(), null, 1)}\n`);
  rmSync(folder, { recursive: true, force: true });
}

/** @param {'floor' | 'peer'} page */
async function buildPage(page) {
  const source = join(import.meta.dirname, 'pages', page);
  await build({
    configFile: false,
    root: source,
    base: './',
    logLevel: 'warn',
    plugins: [preact(), keptFiles('service-worker.js')],
    build: {
      outDir: join(folder, 'pages', page),
      emptyOutDir: true,
      modulePreload: { polyfill: false },
      rolldownOptions: {
        input: {
          first: join(source, 'index.html'),
          'service-worker': join(root, 'src/worker/service-worker.ts'),
        },
        output: {
          entryFileNames: ({ name }) =>
            name === 'service-worker' ? 'service-worker.js' : 'assets/[name]-[hash].js',
        },
      },
    },
  });
}

function collected() {
  const [processor] = cpus();
  const figures = readdirSync(out).map((file) => [
    file.replace('.json', ''),
    JSON.parse(readFileSync(join(out, file), 'utf8')),
  ]);
  return {
    machine: { processor: processor?.model, cores: cpus().length, node: process.version },
    rounds: Number(values.rounds),
    ...Object.fromEntries(figures),
  };
}
