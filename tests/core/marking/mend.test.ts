import { expect, test } from 'vitest';
import type { PromptId } from '../../../src/core/fact/prompt';
import { missesToMend } from '../../../src/core/marking/mend';
import { type Deed, marked, sit } from './made-sat';

const five: readonly PromptId[] = ['mul-7-8', 'mul-6-7', 'mul-8-9', 'mul-4-7', 'mul-9-9'];
const sheet = marked(sit(five, ['wrong', 'right', 'skip', 'right']));
const after = (facts: readonly PromptId[], deeds: readonly Deed[]) =>
  marked(sit(facts, deeds, { purpose: 'mending', onWrong: 'goOn' }));

test('wrong and skipped are to be mended, with what was given; not reached is not', () => {
  expect(missesToMend(sheet, [])).toEqual([
    { fact: 'mul-7-8', gave: '99' },
    { fact: 'mul-8-9', gave: null },
  ]);
});

test('right in a row or in mending since, a fact is mended', () => {
  const rows = [after(['mul-7-8', 'mul-9-9'], ['right', 'right'])];
  expect(missesToMend(sheet, rows)).toEqual([{ fact: 'mul-8-9', gave: null }]);
  expect(missesToMend(sheet, [...rows, after(['mul-8-9'], ['right'])])).toEqual([]);
});

test('missed in a row, a fact is to be mended too, and missed again it stays', () => {
  const rows = [after(['mul-7-8', 'mul-9-9'], ['skip', 'wrong'])];
  expect(missesToMend(sheet, rows)).toEqual([
    { fact: 'mul-7-8', gave: null },
    { fact: 'mul-8-9', gave: null },
    { fact: 'mul-9-9', gave: '99' },
  ]);
});

test('a fact missed at one place and right at another of the sheet is mended once', () => {
  const twice = marked(
    sit(['mul-7-8', 'mul-6-7', 'mul-7-8', 'mul-7-8'], ['wrong', 'right', 'right', 'wrong']),
  );
  expect(missesToMend(twice, [])).toEqual([{ fact: 'mul-7-8', gave: '99' }]);
});

test('numbers to copy are never mended', () => {
  expect(missesToMend(marked(sit(['copy-47', 'mul-6-7'], ['wrong', 'right'])), [])).toEqual([]);
});

test('an accepted answer needs no mending', () => {
  const accepted = marked(sit(five, ['wrong', 'right']), { accepted: new Set([0]) });
  expect(missesToMend(accepted, [])).toEqual([]);
});
