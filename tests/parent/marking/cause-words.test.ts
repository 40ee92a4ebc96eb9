import { expect, test } from 'vitest';
import { type FactId, parseFact } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { causeText, looksLikeSlip } from '../../../src/parent/marking/cause-words';
import { readError } from '../../../src/readings/errors/read-error';

function cause(id: FactId, given: string | null, firstKeyMs = 900) {
  const fact = parseFact(id);
  if (!fact) throw new Error(id);
  const read = readError({ fact, given, firstKeyMs, before: null, pad: 'phone', reach: 9 });
  return { text: causeText(fact, given, read), slip: looksLikeSlip(read), name: read.name };
}

test.each([
  ['mul-7-8', '48', 'the answer to 6 × 8'],
  ['mul-7-8', '49', 'the answer to 7 × 7'],
  ['mul-7-8', '15', 'the answer to 7 + 8'],
  ['mul-7-8', '65', 'the right digits, turned round'],
  ['mul-7-8', '78', 'the two numbers side by side'],
  ['mul-7-8', '57', 'one too many or one too few'],
  ['add-8-5', '14', 'one too many or one too few'],
  ['add-8-5', '8', 'one of the two numbers asked'],
  ['mul-7-0', '7', 'the answer to 7 + 0 or 7 − 0'],
  ['mul-7-8', '46', 'ten too many or ten too few'],
] as const)('%s answered %s: %s', (id, given, text) => {
  const { text: said, name } = cause(id, given);
  // Where two operations explain it alike the words say so before they name them.
  expect(name === 'cannotTell' ? said.replace('can’t tell: ', '') : said).toContain(text);
});

test('a first key before the fact could be read outweighs what the number looks like', () => {
  expect(cause('mul-7-8', '48', 120).text).toBe('keyed before it could be read');
});

test('only what a hand does is proposed as a slip', () => {
  expect(cause('mul-7-8', '65').slip).toBe(true);
  expect(cause('mul-7-8', '48').slip).toBe(false);
  expect(cause('mul-7-8', '15').slip).toBe(false);
});

test('a neighbour that is named has the answer that was given, for every product', () => {
  for (const fact of factsOf('mul')) {
    for (let given = 0; given <= 81; given += 1) {
      if (given === fact.answer) continue;
      const { text, name } = cause(fact.id, `${given}`);
      const named = /^the answer to (\d+) × (\d+)$/.exec(text);
      if (name === 'operand') expect(named).not.toBeNull();
      if (named) expect(Number(named[1]) * Number(named[2])).toBe(given);
    }
  }
});
