import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Conditions, conditionsOf, differences } from '../../../src/readings/rates/conditions';
import { publishedRanges } from '../../../src/readings/rates/published-ranges';
import { type TrendPoint, trendOf } from '../../../src/readings/rates/trend';
import { copyPlan, type Hands, sit } from '../robot';

const usual: Conditions = {
  set: 'times-7',
  length: 25,
  allowanceMs: 45_000,
  sight: 'thread',
  takesItself: true,
  entry: 'touch',
  device: 'tablet',
  onsetBy: 'element',
};

const changes: readonly Partial<Conditions>[] = [
  { set: 'times-8' },
  { length: 20 },
  { allowanceMs: 60_000 },
  { allowanceMs: null, sight: null },
  { sight: 'hidden' },
  { takesItself: false },
  { entry: 'keys' },
  { device: 'laptop' },
  { onsetBy: 'frame' },
];

const day = (number: number) => new Date(Date.UTC(2026, 0, 1 + number)).toISOString().slice(0, 10);
const point = (number: number, value: number, more: Partial<Conditions> = {}): TrendPoint => ({
  day: day(number),
  value,
  ceiling: 25,
  conditions: { ...usual, ...more },
});

describe('a trend', () => {
  it.each(changes)('breaks where %j', (change) => {
    const points = [...[0, 1, 2].map((at) => point(at, 10)), ...[3, 4].map((at) => point(at, 10, change))];
    const stretches = trendOf(points);
    expect(stretches.map((stretch) => stretch.points.length)).toEqual([3, 2]);
    expect(stretches[0]?.changed).toEqual([]);
    expect([...(stretches[1]?.changed ?? [])].sort()).toEqual(Object.keys(change).sort());
  });

  it('loses no sitting and joins none of unlike conditions', () => {
    const kind = fc.integer({ min: 0, max: changes.length - 1 });
    fc.assert(
      fc.property(fc.array(kind, { maxLength: 40 }), (kinds) => {
        const points = kinds.map((which, at) => point(at, at, changes[which]));
        const stretches = trendOf(points);
        expect(stretches.flatMap((stretch) => stretch.points)).toEqual(points);
        for (const stretch of stretches) {
          const [first] = stretch.points;
          if (!first) throw new Error('a stretch has sittings');
          for (const { conditions } of stretch.points)
            expect(differences(first.conditions, conditions)).toEqual([]);
        }
      }),
    );
  });

  it('across a month and a summer-time change counts days, not hours: 2 a week is 2 a week', () => {
    const spring = [0, 1, 2, 3, 4, 5, 6, 7].map(
      (week): TrendPoint => ({ ...point(60 + 7 * week, 8 + 2 * week), ceiling: null }),
    );
    const [stretch] = trendOf(spring);
    expect(stretch?.line?.perWeek).toBeCloseTo(2, 12);
    expect(stretch?.line?.interval.low).toBeCloseTo(2, 12);
    expect(stretch?.line?.first).toBeCloseTo(8, 12);
    expect(stretch?.line?.last).toBeCloseTo(22, 12);
  });

  it('has no line under six sittings or on one day', () => {
    expect(trendOf([0, 1, 2, 3, 4].map((at) => point(at, at)))[0]).toMatchObject({
      line: null,
      noLine: 'tooFew',
    });
    expect(trendOf([0, 0, 0, 0, 0, 0, 0].map((at, i) => point(at, i)))[0]).toMatchObject({
      line: null,
      noLine: 'tooFew',
    });
    expect(trendOf([0, 1, 2, 3, 4, 5].map((at) => point(at, at)))[0]?.line).not.toBeNull();
    expect(trendOf([])).toEqual([]);
  });

  it('has no line where a third of the counts are at their ceiling, and one just below that', () => {
    const counts = [20, 21, 22, 23, 24, 22, 25, 25, 25];
    expect(trendOf(counts.map((count, at) => point(at, count)))[0]).toMatchObject({
      line: null,
      noLine: 'ceiling',
    });
    const fewer = [20, 21, 22, 23, 24, 22, 23, 25, 25];
    expect(trendOf(fewer.map((count, at) => point(at, count)))[0]?.line).not.toBeNull();
    const noCeiling = counts.map((count, at) => ({ ...point(at, count), ceiling: null }));
    expect(trendOf(noCeiling)[0]?.line).not.toBeNull();
  });
});

describe('the conditions of a sitting', () => {
  const hands: Hands = { firstMs: 700, gapMs: 200, doneMs: 300, turnMs: 17 };
  const numbers = Array.from({ length: 20 }, (_, at) => 10 + at);
  const clock = { allowanceMs: 45_000, sight: 'thread' } as const;
  const timed = copyPlan(numbers, { purpose: 'sheet', set: 'times-7', clock });

  it('are read from what was sat', () => {
    expect(conditionsOf(sit(timed, () => hands))).toEqual({ ...usual, length: 20 });
    expect(
      conditionsOf(sit({ ...timed, clock: null }, () => ({ ...hands, via: 'keys', by: 'frame' }))),
    ).toEqual({
      ...usual,
      length: 20,
      allowanceMs: null,
      sight: null,
      takesItself: false,
      entry: 'keys',
      onsetBy: 'frame',
    });
  });

  it('one answer in twenty by another way or source does not make a sitting mixed, five do', () => {
    const odd = (from: number) =>
      sit(timed, (place) => (place >= from ? { ...hands, via: 'keys', by: 'frame' } : hands));
    expect(conditionsOf(odd(19))).toMatchObject({ entry: 'touch', onsetBy: 'element' });
    expect(conditionsOf(odd(15))).toMatchObject({ entry: 'mixed', onsetBy: 'mixed' });
  });

  it('of a sitting without a key are none', () => {
    const sat = sit(timed, () => hands);
    expect(conditionsOf({ ...sat, visits: [] })).toMatchObject({ entry: 'none', onsetBy: 'none' });
  });
});

describe('published ranges', () => {
  // Burns, VanDerHeyden & Jiban 2006, School Psychology Review 35, 401–418 (published).
  it('Burns and others: 14 to 31 in grades 2 and 3, 24 to 49 in grades 4 and 5, written and multi-skill', () => {
    const burns = publishedRanges.filter(({ source }) => source.startsWith('Burns'));
    expect(burns.map(({ grades, digitsPerMin }) => [grades, digitsPerMin])).toEqual([
      [
        [2, 3],
        [14, 31],
      ],
      [
        [4, 5],
        [24, 49],
      ],
    ]);
    expect(burns.every(({ probe, seen }) => probe.includes('several skills') && seen === 'published')).toBe(
      true,
    );
  });

  // Deno & Mirkin 1977 (from memory).
  it('Deno and Mirkin: three levels without a gap, said to be from memory', () => {
    const deno = publishedRanges.filter(({ source }) => source.startsWith('Deno'));
    expect(deno.map(({ digitsPerMin }) => digitsPerMin)).toEqual([
      [0, 9],
      [10, 19],
      [20, null],
      [0, 19],
      [20, 39],
      [40, null],
    ]);
    expect(deno.every(({ seen }) => seen === 'memory')).toBe(true);
  });
});
