import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { files } from './css-files';

/** What each side's selectors begin with; both sides' styles end up in one page. */
const scopes: Readonly<Record<string, readonly string[]>> = {
  child: ['.screen', '.card-screen'],
  parent: ['.parent', '.fact-grid', '.grid-sample'],
  paper: ['.paper-page'],
};

describe.each(Object.entries(scopes))('every selector of src/%s', (part, scope) => {
  test.each(files(part))('in %s stays on its own side', (path) => {
    const strays = selectorsOf(readFileSync(path, 'utf8')).filter(
      (selector) => !scope.some((root) => selector.startsWith(root)),
    );
    expect(strays).toEqual([]);
  });
});

test('a stray selector is seen', () => {
  expect(selectorsOf('@media print { .a,\n.b > c { color: red; } } /* .x { */ .d:not(.e, .f) {}')).toEqual([
    '.a',
    '.b > c',
    '.d:not(.e, .f)',
  ]);
});

/** The selectors of the rules in a style sheet, one by one; steps of key frames and at-rules apart. */
function selectorsOf(css: string): readonly string[] {
  return css
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/@keyframes[^{]*\{(?:[^{}]*\{[^{}]*\})*\s*\}/g, '')
    .split(/[{}]/)
    .map((text) => text.trim().split(';').at(-1)?.trim() ?? '')
    .filter((text) => text !== '' && !text.startsWith('@') && !text.includes(': '))
    .flatMap((list) => list.split(/,\s*(?![^(]*\))/));
}
