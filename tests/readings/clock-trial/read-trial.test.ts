import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { effectiveHistory } from '../../../src/core/household/history';
import type { Trial } from '../../../src/core/household/household';
import type { TrialKind } from '../../../src/core/record/household-record';
import type { Sat, SittingPlan } from '../../../src/core/record/sat';
import { setById } from '../../../src/core/set/teaching-sets';
import { readChildLog } from '../../../src/readings/child-log/child-log';
import { readTrial } from '../../../src/readings/clock-trial/read-trial';
import { sit } from '../robot';

const facts = setById('times-3')?.facts.slice(0, 8) ?? [];
const order: readonly TrialKind[] = [
  'thread',
  'noClock',
  'noClock',
  'thread',
  'noClock',
  'thread',
  'thread',
  'noClock',
];
const trial: Omit<Trial, 'id' | 'isStopped'> = { set: 'times-3', plan: 'eight', order };

/** A day of the trial: `slower` times as long to the first key where the clock was seen. */
function dayOf(day: number, slower: number, more: Partial<SittingPlan> = {}): Sat {
  const withClock = order[day] === 'thread';
  const plan: SittingPlan = {
    child: 'ann',
    purpose: 'sheet',
    of: null,
    set: 'times-3',
    seed: day,
    prompts: facts,
    clock: withClock ? { allowanceMs: 45_000, sight: 'thread' } : null,
    takesItself: withClock,
    onWrong: 'goOn',
    keepTimes: true,
    trial: { trial: 't1', day },
    ...more,
  };
  const firstMs = Math.round(900 * (withClock ? slower : 1) + day * 7);
  const date = `2026-03-${String(day + 2).padStart(2, '0')}`;
  return sit(plan, () => ({ firstMs, gapMs: 200, doneMs: 200, turnMs: 100 }), { day: date });
}

function read(sats: readonly Sat[], more: Parameters<typeof foldHousehold>[0] = []) {
  const stamp = (seq: number) => ({ v: 1, seq, device: 'tablet', at: 0 });
  const household = foldHousehold([
    { ...stamp(1), id: 'a1', kind: 'childAdded', child: 'ann', name: 'Ann', edge: 0 },
    { ...stamp(2), id: 'a2', kind: 'setStarted', child: 'ann', set: 'times-3' },
    { ...stamp(3), id: 't1', kind: 'trialDrawn', child: 'ann', ...trial },
    ...more,
  ]);
  const [child] = household.children;
  const history = effectiveHistory(sats, household).children.get('ann');
  if (!child) throw new Error('no child');
  const own = history ?? { sittings: [], changes: new Map(), printed: [] };
  return readTrial(readChildLog(child, own, () => facts));
}

const days = (count: number, slower: number) => Array.from({ length: count }, (_, day) => dayOf(day, slower));

describe('a trial read from its sheets', () => {
  test('sat to its end it is tested over exactly the list it was drawn from', () => {
    const whole = read(days(8, 1.6));
    expect(whole).toMatchObject({ days: 8, left: 0, isWhole: true });
    expect(whole?.reading.ratio).toBeCloseTo(1.6, 1);
    expect(whole?.reading.test).toEqual({ pTwoSided: 2 / 62, orders: 62 });
  });

  test('without a difference it claims none', () => {
    expect(read(days(8, 1))?.reading.test?.pTwoSided).toBeGreaterThan(0.05);
  });

  test('before its end it is only described', () => {
    expect(read(days(5, 1.6))).toMatchObject({ days: 5, left: 3, isWhole: false, reading: { test: null } });
    expect(read([])).toMatchObject({ days: 0, left: 8, reading: { test: null, ratio: null } });
  });

  test('a day ruled out is a gap, and the others stay with what was drawn for them', () => {
    const sats = days(8, 1.6);
    const out = sats[1];
    const voiding = {
      id: 'r1',
      v: 1,
      seq: 99,
      device: 'tablet',
      at: 0,
      kind: 'ruled',
      child: 'ann',
      target: out?.id ?? '',
      targetDay: out?.day ?? '',
      ruling: { what: 'void' },
    } as const;
    const gap = read(sats, [voiding]);
    expect(gap).toMatchObject({ days: 7, left: 1, reading: { otherwise: 0, test: null } });
    expect(gap?.reading.ratio).toBeCloseTo(1.6, 1);
  });

  test('sheets that were not sat for it, rows, and a second sheet on a day say nothing of it', () => {
    const { trial: _, ...plain } = dayOf(0, 1);
    const row = dayOf(0, 1, { purpose: 'row', of: 'sheet-1' });
    const second = dayOf(1, 1, { second: true });
    const other = dayOf(2, 1, { trial: { trial: 't0', day: 2 } });
    expect(read([plain as Sat, row, second, other])).toMatchObject({ days: 0 });
  });

  test('never drawn, there is none', () => {
    const undone = { id: 'u1', v: 1, seq: 9, device: 'tablet', at: 0, kind: 'undone', target: 't1' } as const;
    expect(read(days(2, 1), [undone])).toBeNull();
  });
});
