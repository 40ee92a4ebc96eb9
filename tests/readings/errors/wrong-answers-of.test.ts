import { describe, expect, it } from 'vitest';
import type { Reach } from '../../../src/core/fact/fact-list';
import type { PromptId } from '../../../src/core/fact/prompt';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat, SittingPlan, Visit } from '../../../src/core/record/sat';
import type { ChildSettings } from '../../../src/core/record/settings';
import { readError } from '../../../src/readings/errors/read-error';
import { wrongAnswersOf } from '../../../src/readings/errors/wrong-answers-of';
import { copyPlan, type Hands, sit } from '../robot';

const hands: Hands = { firstMs: 900, gapMs: 200, doneMs: 300, turnMs: 16 };
const prompts: readonly PromptId[] = ['mul-7-8', 'mul-2-3', 'mul-6-6', 'copy-12', 'mul-4-4'];
const sheet = (more: Partial<SittingPlan> = {}): SittingPlan =>
  copyPlan([], { purpose: 'sheet', prompts, ...more });

const visitOf = (sat: Sat, index: number): Visit => {
  const visit = sat.visits[index];
  if (!visit) throw new Error('the card was sat');
  return visit;
};

const read = (
  sat: Sat,
  keypad: ChildSettings['keypad'],
  reach: Reach,
  accepted: ReadonlySet<number> = new Set(),
) => wrongAnswersOf({ sat, rulings: { ...noRulings, accepted } }, keypad, reach);

describe('the wrong answers of a sitting', () => {
  const wrong = sit(sheet(), () => hands, {
    given: new Map([
      [0, '48'],
      [2, '48'],
      [3, '21'],
    ]),
  });

  it('come in order, each with the answer before it, and never a copied number', () => {
    const errors = read(wrong, 'phone', 9);
    expect(errors.map(({ place, given, before }) => [place, given, before])).toEqual([
      [0, '48', null],
      [2, '48', 6],
    ]);
    expect(errors[0]).toMatchObject({ firstKeyMs: 900, pad: 'phone', reach: 9, taking: 'done' });
    expect(errors.map((error) => readError(error).name)).toEqual(['operand', 'operand']);
  });

  it('keyed on a keyboard are read by the keyboard’s keys, whatever the child’s pad', () => {
    const keyed = sit(sheet(), () => ({ ...hands, via: 'keys' }), { given: new Map([[0, '48']]) });
    expect(read(keyed, 'calculator', 12)[0]).toMatchObject({ pad: 'keyboard', reach: 12 });
    expect(read(wrong, 'calculator', 9)[0]).toMatchObject({ pad: 'calculator' });
  });

  it('on a timed sheet were taken by themselves, unless that is turned off', () => {
    const clock = { allowanceMs: 45_000, sight: 'thread' } as const;
    const given = new Map([[0, '48']]);
    const taking = (plan: SittingPlan) =>
      read(
        sit(plan, () => hands, { given }),
        'phone',
        9,
      )[0]?.taking;
    expect(taking(sheet({ clock }))).toBe('itself');
    expect(taking(sheet({ clock, takesItself: false }))).toBe('done');
    expect(taking(sheet())).toBe('done');
  });

  it('an answer put right on the card opened again is no error; one made wrong there is, without a first key', () => {
    const mend = (given: string) => ({ ...visitOf(wrong, 0), from: '4', given });
    expect(read({ ...wrong, visits: [...wrong.visits, mend('56')] }, 'phone', 9)).toHaveLength(1);
    const errors = read({ ...wrong, visits: [...wrong.visits, mend('54')] }, 'phone', 9);
    expect(errors.map(({ given, firstKeyMs }) => [given, firstKeyMs])).toEqual([
      ['48', 900],
      ['54', null],
    ]);
  });

  it('an answer given with the fact on the card does not hide the one before it', () => {
    const shown: Visit = { ...visitOf(wrong, 0), shown: true, given: '56' };
    const [first, ...rest] = wrong.visits;
    if (!first) throw new Error('five cards were sat');
    expect(read({ ...wrong, visits: [first, shown, ...rest] }, 'phone', 9)[0]).toMatchObject({
      given: '48',
    });
  });

  it('a skipped fact is an omission; a void visit is nothing', () => {
    const skipped: Visit = { ...visitOf(wrong, 0), end: 'skipped', given: null, took: null };
    const left: Visit = { ...visitOf(wrong, 0), end: 'left', given: null, took: null };
    const names = (visit: Visit) =>
      read({ ...wrong, visits: [visit] }, 'phone', 9).map((error) => readError(error).name);
    expect(names(skipped)).toEqual(['omission']);
    expect(names(left)).toEqual([]);
  });

  it('an answer the parent accepted is no error, and still stands before the next one', () => {
    expect(read(wrong, 'phone', 9, new Set([0])).map(({ place }) => place)).toEqual([2]);
    const next = sit(sheet(), () => hands, {
      given: new Map([
        [0, '48'],
        [1, '48'],
      ]),
    });
    expect(read(next, 'phone', 9, new Set([0]))).toMatchObject([{ place: 1, before: 48 }]);
  });

  it('without times still has its answers', () => {
    const untimed = sit(sheet({ keepTimes: false }), () => hands, { given: new Map([[0, '48']]) });
    expect(read(untimed, 'phone', 9)).toMatchObject([{ given: '48', firstKeyMs: null }]);
  });
});
