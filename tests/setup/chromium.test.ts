import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ensureChromium, findChromium } from '../../setup/chromium.mjs';

let empty: string;
let stocked: string;
beforeEach(() => {
  empty = mkdtempSync(join(tmpdir(), 'sumstitch-path-'));
  stocked = mkdtempSync(join(tmpdir(), 'sumstitch-path-'));
  writeFileSync(join(stocked, 'chromium'), '#!/bin/sh\n');
  chmodSync(join(stocked, 'chromium'), 0o755);
  vi.stubEnv('CHROMIUM', '');
});
afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
  rmSync(empty, { recursive: true });
  rmSync(stocked, { recursive: true });
});

test('the first one on the path is found', () => {
  vi.stubEnv('PATH', [empty, stocked].join(delimiter));
  expect(findChromium()).toBe(join(stocked, 'chromium'));
  expect(ensureChromium()).toBe(join(stocked, 'chromium'));
});

test('one that is named goes before one that is found', () => {
  vi.stubEnv('PATH', stocked);
  vi.stubEnv('CHROMIUM', '/opt/own/chromium');
  expect(findChromium()).toBe('/opt/own/chromium');
});

test('a file that cannot be run is none', () => {
  chmodSync(join(stocked, 'chromium'), 0o644);
  vi.stubEnv('PATH', stocked);
  expect(findChromium()).toBeUndefined();
});

test('where none can be installed, the reader is told what to do', () => {
  vi.stubEnv('PATH', empty);
  vi.spyOn(process, 'getuid').mockReturnValue(1000);
  expect(() => ensureChromium()).toThrow(/Install Chromium by hand, or set CHROMIUM/);
});

test('the administrator of a system without apt is told the same', () => {
  vi.stubEnv('PATH', empty);
  vi.spyOn(process, 'getuid').mockReturnValue(0);
  expect(() => ensureChromium()).toThrow(/Install Chromium by hand, or set CHROMIUM/);
});
