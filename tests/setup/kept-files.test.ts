import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeKeptFiles } from '../../setup/kept-files.mjs';

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'sumstitch-kept-'));
  mkdirSync(join(dir, 'assets'));
  writeFileSync(join(dir, 'index.html'), '<p>page</p>');
  writeFileSync(join(dir, 'assets/first.js'), 'one');
  writeFileSync(join(dir, 'worker.js'), 'const built = __BUILT__;');
});
afterEach(() => rmSync(dir, { recursive: true }));

function keep(): { version: string; files: string[] } {
  writeFileSync(join(dir, 'worker.js'), 'const built = __BUILT__;');
  writeKeptFiles(dir, 'worker.js');
  const [, json = ''] = /^const built = (.*);$/.exec(readFileSync(join(dir, 'worker.js'), 'utf8')) ?? [];
  return JSON.parse(json);
}

test('the worker is given every file but itself, by its path', () => {
  expect(keep().files).toEqual(['assets/first.js', 'index.html']);
});

test('the version changes with any content and with nothing else', () => {
  const { version } = keep();
  expect(keep().version).toBe(version);
  writeFileSync(join(dir, 'index.html'), '<p>page!</p>');
  expect(keep().version).not.toBe(version);
});

test('a dollar sign in a file name is written as it is', () => {
  writeFileSync(join(dir, "assets/$&-$'.js"), '');
  expect(keep().files).toContain("assets/$&-$'.js");
});

test.each([
  ['import { a } from "./a.js"; __BUILT__', /stand alone/],
  ['const a = import("./a.js"); __BUILT__', /stand alone/],
  ['nothing', /exactly once/],
  ['__BUILT__ __BUILT__', /exactly once/],
])('a worker of %s is refused', (code, why) => {
  writeFileSync(join(dir, 'worker.js'), code);
  expect(() => writeKeptFiles(dir, 'worker.js')).toThrow(why);
});
