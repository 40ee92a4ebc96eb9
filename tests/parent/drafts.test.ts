import { expect, test } from 'vitest';
import { draft, dropDraft } from '../../src/parent/drafts';

test('what is half typed is there again under its key', () => {
  draft('remark', 'as it was').value = 'half a sen';
  expect(draft('remark', 'as it was').value).toBe('half a sen');
  expect(draft('another').value).toBe('');
});

test('a draft that was dropped begins again from what it stands for', () => {
  draft('name', 'Wren').value = 'Wre';
  dropDraft('name');
  expect(draft('name', 'Wren').value).toBe('Wren');
});
