import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { type HadSource, isHad, isUntried, toTeach } from '../../../src/core/first-try/to-teach';
import { setById } from '../../../src/core/set/teaching-sets';
import type { FactSummary } from '../../../src/core/summary/summary';
import { knownOn } from '../known';

const times8 = setById('times-8')?.facts ?? [];
const fact: FactId = 'mul-8-7';

function child(met: FactSummary | null, ticked: readonly FactId[] = []): HadSource {
  return { facts: new Map(met ? [[fact, met]] : []), ticked: new Set(ticked) };
}

const lately = (recent: string, rightDays = 1): FactSummary => ({
  ...knownOn('2026-03-01'),
  rightDays,
  seen: recent.length,
  recent,
});

describe('a fact is had', () => {
  test.each(['1', '01', '111', '0110', '1110'])('right at first try on some day and lately %s', (recent) => {
    expect(isHad(fact, child(lately(recent)))).toBe(true);
  });

  test('on the parent’s word where it was never answered, and not against its answers', () => {
    expect(isHad(fact, child(null, [fact]))).toBe(true);
    expect(isHad(fact, child(lately('0', 0), [fact]))).toBe(false);
  });
});

describe('a fact is not had', () => {
  test.each(['0', '10', '100', '1010', '11100'])('lately %s', (recent) => {
    expect(isHad(fact, child(lately(recent)))).toBe(false);
  });

  test('where it was right only once it had been put right that day', () => {
    expect(isHad(fact, child(lately('01', 0)))).toBe(false);
  });

  test('where nobody has asked', () => {
    expect(isHad(fact, child(null))).toBe(false);
    expect(isUntried(fact, child(null))).toBe(true);
    expect(isUntried(fact, child(null, [fact]))).toBe(false);
    expect(isUntried(fact, child(lately('0', 0)))).toBe(false);
  });
});

test('to teach is the set without what is had, in its order', () => {
  fc.assert(
    fc.property(fc.subarray([...times8]), fc.subarray([...times8]), (known, missed) => {
      const facts = new Map([
        ...known.map((id) => [id, lately('1')] as const),
        ...missed.map((id) => [id, lately('0', 0)] as const),
      ]);
      const open = toTeach(times8, { facts, ticked: new Set() });
      const had = new Set(known.filter((id) => !missed.includes(id)));
      expect(open).toEqual(times8.filter((id) => !had.has(id)));
    }),
  );
});
