import { describe, expect, test } from 'vitest';
import { makeFact } from '../../../src/core/fact/fact';
import type { PromptId } from '../../../src/core/fact/prompt';
import { markSat } from '../../../src/core/marking/mark-sat';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { planOf, Sitter, timed } from './sitter';

const mark = (sitter: Sitter) => markSat(sitter.sat(), noRulings, defaultChildSettings.limits);

describe('the traps of taking an answer', () => {
  test('12 typed for 6 + 2 spoils one card, not two', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2', 'add-3-4']));
    sitter.answer('12', 1000, 2000);
    expect(sitter.state.entry).toBe('');
    expect(sitter.visits).toHaveLength(1);
    expect(sitter.visits[0]).toMatchObject({ given: '1', late: 1 });
    expect(sitter.visits[0]?.keys.map(([key]) => key)).toEqual(['1', '2']);
    sitter.answer('4', 2017, 3000).answer('7', 4000, 5000);
    expect(mark(sitter).places.map(({ outcome }) => outcome)).toEqual(['wrong', 'right', 'right']);
  });

  test('the second key of 12 spoils nothing when the next card is on screen already', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2']));
    sitter.shown(1000).key('1', 2000).shown(2017).key('2', 2150);
    expect(sitter.state).toMatchObject({ place: 1, entry: '' });
    expect(sitter.visits[0]).toMatchObject({ given: '1', late: 1 });
  });

  test('a child sure that 6 × 3 is 9 can give it', () => {
    const sitter = new Sitter(timed(['mul-6-3', 'mul-2-2']));
    sitter.answer('9', 1000, 2000, 'done');
    expect(sitter.visits[0]).toMatchObject({ given: '9', took: 'done', end: 'taken' });
    expect(sitter.state.place).toBe(1);
    expect(mark(sitter).places[0]).toMatchObject({ outcome: 'wrong', given: '9', answer: 18 });
  });

  test('a one-digit answer can be taken back', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2']));
    sitter.answer('7', 1000, 2000).shown(2017).key('back', 2600);
    expect(sitter.state).toMatchObject({ place: 0, entry: '', from: '', phase: 'showing' });
    sitter.answer('8', 2617, 3400).answer('4', 3417, 4000);
    const marked = mark(sitter);
    expect(marked.places[0]).toMatchObject({ given: '8', outcome: 'right', byBell: true });
    expect(marked).toMatchObject({ right: 2, wrong: 0 });
  });

  test('a key at the bell counts', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2']));
    sitter.shown(812.345).key('8', 45_812.345);
    expect(sitter.visits[0]).not.toHaveProperty('afterBell');
    expect(sitter.whats()).not.toContain('bell');
    expect(mark(sitter)).toMatchObject({ right: 1, rightByBell: 1 });
  });

  test('a key just after the bell does not count, though the answer is kept', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2']));
    sitter.shown(812.345).key('8', 45_812.445);
    expect(sitter.visits[0]).toMatchObject({ given: '8', afterBell: true });
    expect(sitter.state.ended).toBe('bell');
    expect(mark(sitter)).toMatchObject({ right: 1, rightByBell: 0, notReached: 1 });
  });

  test.each([0.001, 0.1, 3.7, 1024.304, 1024.696, 1061.07, 99_999.999])(
    'a key at the bell counts whatever the first onset: %d ms',
    (onsetMs) => {
      const bellMs = Number((onsetMs + 45_000).toFixed(3));
      const at = new Sitter(timed(['add-6-2', 'add-2-2'])).shown(onsetMs).key('8', bellMs);
      const after = new Sitter(timed(['add-6-2', 'add-2-2']))
        .shown(onsetMs)
        .key('8', Number((bellMs + 0.001).toFixed(3)));
      expect(at.visits[0]?.afterBell).toBeUndefined();
      expect(after.visits[0]?.afterBell).toBe(true);
    },
  );

  test('a hundred cards give a hundred onsets', () => {
    const prompts = Array.from({ length: 100 }, (_, n): PromptId => {
      const fact = makeFact('add', n % 10, Math.floor(n / 10));
      if (!fact) throw new Error('no such fact');
      return fact.id;
    });
    const sitter = new Sitter(planOf(prompts));
    for (let n = 0; n < 100; n += 1) sitter.answer('7', 100 + n * 1000, 600 + n * 1000, 'done');
    expect(sitter.state.ended).toBe('finished');
    const { visits } = sitter.sat();
    expect(visits).toHaveLength(100);
    expect(visits.map(({ onsetMs }) => onsetMs)).toEqual(prompts.map((_, n) => 100 + n * 1000));
    expect(new Set(visits.map(({ place }) => place)).size).toBe(100);
  });
});
