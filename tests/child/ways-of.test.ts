import { expect, test } from 'vitest';
import { waysOf } from '../../src/child/ways-of';

const plan = {
  purpose: 'cards',
  prompts: ['mul-7-8', 'mul-2-2', 'mul-7-8', 'mul-5-5'],
  shownFirst: [0],
} as const;

test('only a new fact has its way, also where it comes again', () => {
  const wayTo = waysOf({ plan, had: new Set(), lines: new Map() });
  expect(wayTo('mul-7-8')?.line).toBeTruthy();
  expect(wayTo('mul-7-8')?.picture).toMatchObject({ what: 'array' });
  expect(wayTo('mul-2-2')).toBeNull();
});

test('the turn-around is the way once the child has it', () => {
  const way = waysOf({ plan, had: new Set(['mul-8-7']), lines: new Map() })('mul-7-8');
  expect(way?.line).toBe('The same as 8 × 7.');
});

test('the parent’s own line goes before the tool’s, over the plain picture of the fact', () => {
  const way = waysOf({ plan, had: new Set(), lines: new Map([['mul-7-8', '5, 6, 7, 8: 56 is 7 × 8']]) })(
    'mul-7-8',
  );
  expect(way?.line).toBe('5, 6, 7, 8: 56 is 7 × 8');
  expect(way?.picture).toEqual({
    what: 'array',
    rows: [{ count: 7, look: 'one' }],
    columns: [{ count: 8, look: 'one' }],
  });
});

test('outside a card round there is no help', () => {
  const asked = { ...plan, purpose: 'mending' } as const;
  expect(waysOf({ plan: asked, had: new Set(), lines: new Map() })('mul-7-8')).toBeNull();
});
