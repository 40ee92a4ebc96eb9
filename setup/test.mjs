import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureChromium } from './chromium.mjs';
import { ensureInstalled, root, run } from './install.mjs';

const results = join(root, 'node_modules', '.tmp', 'results');
const counts = { passed: 0, failed: 0 };

/** @type {readonly (readonly [name: string, act: () => unknown])[]} */
const stages = [
  ['install', ensureInstalled],
  ['chromium', ensureChromium],
  ['format and lint', () => run('biome', ['ci', '--colors=off', '.'])],
  ['types', () => ['.', 'src/core', 'src/worker', 'tests'].map((project) => run('tsc', ['-p', project]))],
  ['unit', () => runTests('unit')],
  ['browser', () => runTests('browser')],
  ['build', () => run('vite', ['build', '--logLevel=warn'])],
  ['size', () => run('size-limit', [])],
  ['unused', () => run('knip', ['--no-progress'])],
  ['journeys', () => runTests('journeys')],
];

rmSync(results, { recursive: true, force: true });
for (const [name, act] of stages) {
  const startedMs = performance.now();
  const before = counts.passed;
  try {
    act();
  } catch (error) {
    console.log(`${error instanceof Error ? error.message : error}\n\n${line(name, startedMs)}  failed`);
    process.exitCode = 1;
    // A stage without tests of its own that fails is one failure, so that the closing line never reads as good.
    if (counts.failed === 0) counts.failed = 1;
    break;
  }
  const tests = counts.passed - before;
  console.log(`${line(name, startedMs)}${tests > 0 ? `  ${tests} tests` : ''}`);
}
console.log(`\n${counts.passed} passed, ${counts.failed} failed`);

/** @param {string} project one of the projects of vitest.config.ts */
function runTests(project) {
  const file = join(results, `${project}.json`);
  mkdirSync(results, { recursive: true });
  try {
    run('vitest', [
      'run',
      '--project',
      project,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ]);
  } finally {
    count(file);
  }
}

/** @param {string} file */
function count(file) {
  // Not there if vitest itself came to grief; what it said is in the error that is on its way.
  if (!existsSync(file)) return;
  const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(file, 'utf8'));
  counts.passed += numPassedTests;
  counts.failed += numFailedTests;
}

/**
 * @param {string} name
 * @param {number} startedMs
 */
function line(name, startedMs) {
  return `${name.padEnd(16)}${((performance.now() - startedMs) / 1000).toFixed(1).padStart(7)} s`;
}
