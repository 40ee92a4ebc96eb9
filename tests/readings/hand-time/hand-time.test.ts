import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Sat } from '../../../src/core/record/sat';
import { copiesOf } from '../../../src/readings/hand-time/copies';
import { digitGaps } from '../../../src/readings/hand-time/digit-gaps';
import {
  copiesPooled,
  type HandTime,
  handTimes,
  pausesInside,
  thinkMs,
} from '../../../src/readings/hand-time/hand-time';
import { copyPlan, type Hands, sit } from '../robot';

const hands: Hands = { firstMs: 700, gapMs: 200, doneMs: 300, turnMs: 17 };
const steady = () => hands;

const only = (times: readonly HandTime[]): HandTime => {
  const [time] = times;
  if (!time || times.length !== 1) throw new Error(`${times.length} hand times`);
  return time;
};

describe('a round of copies', () => {
  it('drops its first three answers and keeps the rest', () => {
    const copies = copiesOf(sit(copyPlan([1, 2, 3, 44, 55, 6]), steady));
    expect(copies.map(({ digits }) => digits)).toEqual([2, 2, 1]);
    expect(copies[0]).toEqual({
      device: 'tablet',
      via: 'touch',
      digits: 2,
      firstKeyMs: 700,
      gapsMs: [200],
      doneMs: null,
      turnMs: 17,
    });
    expect(copies[2]?.turnMs).toBeNull();
  });

  it('counts a wrong copy among the first three but never as a hand time', () => {
    const sat = sit(copyPlan([1, 2, 3, 4, 5]), steady, {
      given: new Map([
        [0, '7'],
        [4, '9'],
      ]),
    });
    expect(copiesOf(sat)).toHaveLength(1);
  });

  it('leaves out a number put right on the way', () => {
    const sat = sit(copyPlan([1, 2, 3, 44, 55]), steady);
    const [, , , visit] = sat.visits;
    if (!visit) throw new Error('four cards were sat');
    const mended = {
      ...visit,
      keys: [['7', 1, 'touch'], ['back', 2, 'touch'], ...visit.keys],
    } as typeof visit;
    expect(copiesOf({ ...sat, visits: sat.visits.with(3, mended) })).toHaveLength(1);
  });

  it('leaves out a copy keyed half by touch and half by keys, and one opened again', () => {
    const sat = sit(copyPlan([1, 2, 3, 44, 55]), steady);
    const [, , , visit] = sat.visits;
    const [first, second] = visit?.keys ?? [];
    if (!visit || !first || !second) throw new Error('the fourth card has two digits');
    const half = { ...visit, keys: [first, [second[0], second[1], 'keys'] as const] };
    expect(copiesOf({ ...sat, visits: sat.visits.with(3, half) })).toHaveLength(1);
    expect(copiesOf({ ...sat, visits: sat.visits.with(3, { ...visit, from: '4' }) })).toHaveLength(1);
  });

  it('says nothing from a sheet, from facts, or without times', () => {
    expect(copiesOf(sit(copyPlan([1, 2, 3, 4, 5], { purpose: 'sheet' }), steady))).toEqual([]);
    const facts = { ...copyPlan([]), prompts: Array.from({ length: 6 }, () => 'mul-2-3' as const) };
    expect(copiesOf(sit(facts, steady))).toEqual([]);
    expect(copiesOf(sit(copyPlan([1, 2, 3, 4, 5], { keepTimes: false }), steady))).toEqual([]);
  });

  it('has no turn across a break', () => {
    const sat = sit(copyPlan([1, 2, 3, 4, 5]), steady);
    const away = [{ why: 'hidden', fromMs: 1, toMs: 2, afterVisits: 4 }] as const;
    expect(copiesOf({ ...sat, away }).map(({ turnMs }) => turnMs)).toEqual([null, null]);
  });

  it('never reads a key that fell late for the next card', () => {
    const sat = sit(copyPlan([1, 2, 3, 44, 5]), steady);
    const [, , , visit] = sat.visits;
    if (!visit) throw new Error('four cards were sat');
    const late = { ...visit, keys: [...visit.keys, ['9', 99_999, 'touch'] as const], late: 1 };
    expect(digitGaps(late)).toEqual([200]);
    expect(copiesOf({ ...sat, visits: sat.visits.with(3, late) })).toHaveLength(2);
  });
});

describe('hand time', () => {
  const ofEach = [
    ...Array.from({ length: 13 }, (_, i) => (i % 9) + 1),
    ...Array.from({ length: 10 }, (_, i) => 23 + i),
  ];

  it('is the median of what the hands did, and enough from ten copies of each digit count', () => {
    const time = only(
      handTimes([sit(copyPlan(ofEach), (place) => ({ ...hands, firstMs: 600 + 10 * place }))]),
    );
    expect(time).toMatchObject({
      copies: 20,
      isEnough: true,
      firstKeyMs: 725,
      gapMs: 200,
      turnMs: 17,
      doneMs: null,
    });
    expect([...time.byDigits]).toEqual([
      [1, 10],
      [2, 10],
    ]);
    expect(only(handTimes([sit(copyPlan(ofEach.slice(0, -1)), steady)])).isEnough).toBe(false);
  });

  it('pools rounds, and keeps devices and ways of entry apart', () => {
    const plan = copyPlan([1, 2, 3, 4, 5]);
    const rounds = [
      sit(plan, steady, { day: '2026-01-05' }),
      sit(plan, steady, { day: '2026-01-06' }),
      sit(plan, () => ({ ...hands, firstMs: 400, via: 'keys' }), { day: '2026-01-07' }),
      sit(plan, () => ({ ...hands, firstMs: 900 }), { device: 'laptop' }),
    ];
    expect(
      handTimes(rounds).map(({ device, via, copies, firstKeyMs }) => [device, via, copies, firstKeyMs]),
    ).toEqual([
      ['tablet', 'touch', 4, 700],
      ['tablet', 'keys', 2, 400],
      ['laptop', 'touch', 2, 900],
    ]);
  });

  it('forgets the oldest copies, since hands grow faster', () => {
    const year: Sat[] = Array.from({ length: 12 }, (_, month) =>
      sit(copyPlan(ofEach), () => ({ ...hands, firstMs: month < 9 ? 1200 : 600 })),
    );
    const time = only(handTimes(year));
    expect(time.copies).toBe(copiesPooled);
    expect(time.firstKeyMs).toBe(600);
  });

  it('measures the done key where an answer waits for it', () => {
    const time = only(handTimes([sit(copyPlan([1, 2, 3, 4, 5], { takesItself: false }), steady)]));
    expect(time.doneMs).toBe(300);
  });
});

describe('think time and pauses', () => {
  const time = only(
    handTimes([
      sit(copyPlan(Array.from({ length: 13 }, (_, i) => 10 + i)), (place) => ({
        ...hands,
        gapMs: 100 * place,
      })),
    ]),
  );

  it('is the first key less the hand time, never under 0', () => {
    expect(thinkMs(1500, time)).toBe(800);
    expect(thinkMs(650, time)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60_000, noNaN: true }), (firstKeyMs) => {
        expect(thinkMs(firstKeyMs, time)).toBe(Math.max(firstKeyMs, time.firstKeyMs) - time.firstKeyMs);
      }),
    );
  });

  it('a gap longer than nine in ten of the copied ones is a pause inside the answer', () => {
    // The gaps kept are 300, 400, … 1200: nine in ten are at most 1110 by linear interpolation.
    expect(time.pauseMs).toBeCloseTo(1110, 9);
    const answer = (gapMs: number) => sit(copyPlan([48, 48]), () => ({ ...hands, gapMs })).visits[0];
    const [short, long] = [answer(1110), answer(1111)];
    if (!short || !long) throw new Error('both cards were sat');
    expect(pausesInside(short, time)).toBe(0);
    expect(pausesInside(long, time)).toBe(1);
    expect(pausesInside(long, { ...time, pauseMs: null })).toBe(0);
  });
});
