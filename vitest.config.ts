import preact from '@preact/preset-vite';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { CHROMIUM_FLAGS, findChromium } from './setup/chromium.mjs';
import { isolatingHeaders } from './src/worker/headers.ts';

const executablePath = findChromium();

export default defineConfig({
  root: import.meta.dirname,
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/**/*.browser.test.{ts,tsx}'],
          // No test is about speed: a time limit only ends one that hangs, also on a machine with much else to do.
          testTimeout: 60_000,
        },
      },
      {
        plugins: [preact()],
        server: { headers: { ...isolatingHeaders } },
        // A dependency first met in mid-run reloads the page under the test, so all of them are named here.
        optimizeDeps: {
          include: [
            'preact',
            'preact/hooks',
            'preact/jsx-runtime',
            'preact/jsx-dev-runtime',
            'preact/test-utils',
            '@preact/signals',
            '@testing-library/preact',
            'axe-core',
            'date-fns',
            'fast-check',
            'howler',
            'idb-keyval',
            'pure-rand/distribution/uniformInt',
            'pure-rand/generator/xoroshiro128plus',
            'simple-statistics',
            'valibot',
          ],
        },
        test: {
          name: 'browser',
          include: ['tests/**/*.browser.test.{ts,tsx}'],
          testTimeout: 60_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: {
                ...(executablePath ? { executablePath } : {}),
                chromiumSandbox: false,
                args: CHROMIUM_FLAGS,
              },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        test: {
          name: 'journeys',
          environment: 'node',
          include: ['tests/journeys/**/*.journey.ts'],
          testTimeout: 300_000,
          hookTimeout: 60_000,
          expect: { poll: { timeout: 10_000 } },
          // Each file starts a browser of its own; more at once than the machine has cores only adds noise.
          maxWorkers: 2,
        },
      },
      {
        test: {
          name: 'bench',
          environment: 'node',
          include: ['tests/bench/**/*.bench.ts'],
          testTimeout: 3_600_000,
          hookTimeout: 60_000,
          disableConsoleIntercept: true,
          // Two at once would measure each other.
          maxWorkers: 1,
          fileParallelism: false,
        },
      },
      {
        test: {
          name: 'torture',
          environment: 'node',
          include: ['tests/torture/**/*.torture.ts'],
          testTimeout: 7_200_000,
          disableConsoleIntercept: true,
        },
      },
      {
        test: {
          name: 'evaluate',
          environment: 'node',
          include: ['tests/evaluation/**/*.evaluation.ts'],
          testTimeout: 3_600_000,
          disableConsoleIntercept: true,
        },
      },
      {
        test: {
          name: 'shots',
          environment: 'node',
          include: ['tests/shots/**/*.shot.ts'],
          testTimeout: 300_000,
          hookTimeout: 60_000,
          maxWorkers: 1,
        },
      },
    ],
  },
});
