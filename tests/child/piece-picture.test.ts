import { describe, expect, test } from 'vitest';
import { dyeOf, pictureCloth } from '../../src/child/piece-picture';
import { noRulings } from '../../src/core/marking/sat-rulings';
import { facts, limits, sit } from '../core/marking/made-sat';

const day = '2026-03-02';
// Two of five reached by the bell.
const half = sit(facts(5), ['right', 'right'], { clock: { allowanceMs: 2_500, sight: 'thread' } });
const sittings = [{ sat: { ...half, day }, child: half.child, rulings: noRulings }];

const statesOn = (today: string, isTodayDone: boolean) =>
  pictureCloth(sittings, limits, today, isTodayDone).map(({ places }) => places.map(({ state }) => state));

describe('a piece in the long cloth', () => {
  test('has its open places woven in plainly once nothing is left of its day, or the day is over', () => {
    const [ended] = statesOn(day, true);
    expect(ended?.slice(0, 2)).toEqual(['stitch', 'stitch']);
    expect(ended?.slice(3)).toEqual(['plain', 'plain']);
    expect(statesOn('2026-03-03', false)).toEqual([ended]);
  });

  test('has them loose while its day goes on', () => {
    expect(statesOn(day, false)[0]?.slice(3)).toEqual(['loose', 'loose']);
  });
});

test('a set is always worked in the same thread', () => {
  expect(dyeOf('times-3')).toBe(dyeOf('times-3'));
  expect(new Set(['times-3', 'times-4', 'times-5'].map(dyeOf)).size).toBe(3);
});
