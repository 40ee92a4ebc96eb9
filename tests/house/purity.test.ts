import { expect, test } from 'vitest';
import { listFiles, readSources } from './sources';

const pure = ['core', 'readings'];
const impure =
  /\bDate\.now\b|\bnew Date\(\s*\)|\bDate\(\s*\)|\bMath\.random\b|\bcrypto\b|\bperformance\b|\bset(?:Timeout|Interval)\b|\bqueueMicrotask\b|\bfetch\(|\blocalStorage\b|\bindexedDB\b/;

test('the pure parts know no clock, dice, timer or storage', () => {
  const wrong = readSources()
    .filter(({ part }) => pure.includes(part))
    .flatMap(({ file, text }) =>
      withoutComments(text)
        .split('\n')
        .filter((line) => impure.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
  expect(wrong).toEqual([]);
});

test.each([
  'Date.now()',
  'new Date()',
  'Math.random()',
  'crypto.subtle',
  'performance.now()',
  'setTimeout(f, 1)',
])('%s would be found', (text) => expect(text).toMatch(impure));

test('a date made from given numbers is allowed', () => {
  expect('new Date(2026, 0, 1)').not.toMatch(impure);
});

test('the pure parts hold scripts only', () => {
  const others = pure
    .flatMap((part) => listFiles('src').filter((file) => file.startsWith(`src/${part}/`)))
    .filter((file) => !/\.ts$|\/tsconfig\.json$/.test(file));
  expect(others).toEqual([]);
});

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
}
