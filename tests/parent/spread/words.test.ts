import { expect, test } from 'vitest';
import type { PromptId } from '../../../src/core/fact/prompt';
import type { MarkedPlace } from '../../../src/core/marking/marked';
import { readSpread } from '../../../src/core/spread/read-spread';
import { spreadFacts } from '../../../src/core/spread/spread-facts';
import { opsText, proposalHow, proposalText } from '../../../src/parent/spread/words';

const asked = ([0, 1] as const).flatMap((part) => spreadFacts(['mul'], part, 2));

function read(isRight: (id: PromptId) => boolean, firstKeyMs: number | null = 1200) {
  const places = asked.map((prompt, place): MarkedPlace => {
    const outcome = isRight(prompt) ? 'right' : 'wrong';
    const common = { answer: 0, given: '0', byBell: false, tookMs: null, atMs: null };
    return { place, prompt, outcome, firstKeyMs, shown: false, accepted: false, slip: null, ...common };
  });
  return readSpread(['mul'], places, 200, []);
}

test('operations are listed as a sentence lists them', () => {
  expect(opsText(['add'])).toBe('addition');
  expect(opsText(['add', 'sub'])).toBe('addition and subtraction');
  expect(opsText(['add', 'sub', 'div'])).toBe('addition, subtraction and division');
});

test('the proposal says how many sets are kept and which begins', () => {
  expect(proposalText(read(() => true))).toBe(
    'Keep 11 sets in practice and tick their facts as known; nothing is left to begin with.',
  );
  expect(proposalText(read(() => false))).toBe('Begin with “Times 2”: no set was all right and quick.');
  expect(proposalText(read((id) => !/mul-(7-|\d-7)/.test(id)))).toMatch(
    /^Keep \w+ sets? in practice and tick their facts as known; begin with “/,
  );
});

test('its evidence names every set with its count and its pace, and the rule', () => {
  const [groups, rule] = proposalHow(read(() => true));
  expect(groups).toMatch(/^Times 2: (\d) of \1 right, begun after about 1\.0\u00a0s; /);
  expect(groups?.split('; ')).toHaveLength(11);
  expect(rule).toContain('within about 3\u00a0s');
  expect(proposalHow(read(() => true, null))[0]).not.toContain('begun');
});
