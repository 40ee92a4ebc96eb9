import { expect, test } from 'vitest';
import { LogTroubleError } from '../../src/log/trouble';
import { troubleSentence } from '../../src/parent/trouble-words';

const kinds = ['refused', 'full', 'later', 'blocked', 'gone', 'unknown'] as const;

test('each trouble of the log has a sentence of its own, thrown or shown', () => {
  const sentences = kinds.map((what) => troubleSentence(new LogTroubleError(what)));
  expect(new Set(sentences).size).toBe(kinds.length);
  kinds.forEach((what, index) => {
    expect(troubleSentence({ what })).toBe(sentences[index]);
  });
  for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].*\.$/);
});

test('anything else thrown is told in plain words too', () => {
  for (const reason of [new Error('boom'), 'boom', null, undefined, { trouble: 3 }, { what: 'toString' }]) {
    expect(troubleSentence(reason)).toBe(troubleSentence(new LogTroubleError('unknown')));
  }
});
