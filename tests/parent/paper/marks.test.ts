import { describe, expect, test } from 'vitest';
import {
  erased,
  noMarks,
  reachedTo,
  resultOf,
  tapped,
  typed,
  written,
} from '../../../src/parent/paper/marks';
import { promptsOf } from '../made-household';

const prompts = promptsOf('times-7', 10);
const timed = noMarks(prompts, true);

describe('a sheet being read off', () => {
  test('with a bell first asks how far, and is no result until then', () => {
    expect(resultOf(timed)).toBeNull();
    expect(resultOf(tapped(timed, 6))).toEqual({ reached: 7, marks: new Map() });
  });

  test('without a bell is all done and all right before anything is tapped', () => {
    expect(resultOf(noMarks(prompts, false))).toEqual({ reached: 10, marks: new Map() });
  });

  test('a tap makes wrong, another blank, a third right again; what was not reached takes none', () => {
    const far = tapped(timed, 6);
    const once = tapped(far, 2);
    expect(once.marks.get(2)).toEqual({ is: 'wrong', given: null });
    expect(tapped(once, 2).marks.get(2)).toEqual({ is: 'blank' });
    expect(tapped(tapped(once, 2), 2)).toEqual(far);
    expect(tapped(far, 7)).toBe(far);
  });

  test('digits typed are what was written; the right number is right, and none is only wrong', () => {
    const far = tapped(timed, 9);
    // 7 × 1.
    expect(typed(far, prompts, 0, '8').marks.get(0)).toEqual({ is: 'wrong', given: '8' });
    expect(typed(far, prompts, 0, '7').marks.has(0)).toBe(false);
    const two = typed(typed(far, prompts, 1, '1'), prompts, 1, '5');
    expect(two.marks.get(1)).toEqual({ is: 'wrong', given: '15' });
    expect(erased(two, prompts, 1).marks.get(1)).toEqual({ is: 'wrong', given: '1' });
    expect(written(two, prompts, 1, '').marks.get(1)).toEqual({ is: 'wrong', given: null });
    expect(typed(timed, prompts, 0, '8')).toBe(timed);
  });

  test('no more digits are taken than a card holds', () => {
    const long = [...'123456'].reduce((state, digit) => typed(state, prompts, 0, digit), tapped(timed, 9));
    expect(long.marks.get(0)).toEqual({ is: 'wrong', given: '1234' });
  });

  test('said to have come less far, what was marked behind that is forgotten', () => {
    const marked = tapped(tapped(tapped(timed, 9), 8), 1);
    expect([...reachedTo(marked, 5).marks.keys()]).toEqual([1]);
    expect([...reachedTo(marked, null).marks.keys()]).toEqual([8, 1]);
  });
});
