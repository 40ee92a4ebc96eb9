import { describe, expect, test } from 'vitest';
import type { PromptId } from '../../../src/core/fact/prompt';
import { copyNumbers } from '../../../src/core/hand-round/hand-round';
import type { KeyPress, Sat, SittingPlan } from '../../../src/core/record/sat';
import { summarize } from '../../../src/core/summary/summarize';
import { type Act, ruled, sit } from '../plan/sit';

const day = '2026-03-02';

function satOf(
  prompts: readonly PromptId[],
  over: Partial<Sat> = {},
  tookMs = 1000,
  act: Act = 'right',
): Sat {
  const plan: SittingPlan = {
    child: 'ann',
    purpose: over.purpose ?? 'practice',
    of: null,
    set: null,
    seed: 1,
    prompts,
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: true,
  };
  return {
    ...sit(plan, over.day ?? day, { act: () => act, tookMs }),
    ...over,
  };
}

const touched = (sat: Sat): Sat => ({
  ...sat,
  visits: sat.visits.map((visit) => ({
    ...visit,
    keys: visit.keys.map(([key, at]): KeyPress => [key, at, 'touch']),
  })),
});

describe('hands', () => {
  const round = satOf(copyNumbers(1));

  test('are one way of entry on one device, those that sat last at the end', () => {
    const { hands } = summarize([ruled(round), ruled(touched(satOf(copyNumbers(2)))), ruled(round)]);
    expect(hands.map(({ via }) => via)).toEqual(['touch', 'keys']);
    const other = summarize([ruled(round), ruled({ ...round, device: 'phone' })]);
    expect(other.hands.map(({ device }) => device)).toEqual(['slate', 'phone']);
  });

  test('count their copy rounds sat to the end, and know the last day', () => {
    const later = satOf(copyNumbers(2), { day: '2026-03-09' });
    const { hands } = summarize([ruled(round), ruled(later)]);
    expect(hands).toEqual([{ device: 'slate', via: 'keys', copied: 2, copiedOn: '2026-03-09' }]);
    const stopped = satOf(copyNumbers(2), {}, 1000, 'leave');
    expect(summarize([ruled({ ...stopped, visits: round.visits, ended: 'stopped' })]).hands[0]?.copied).toBe(
      0,
    );
  });

  test('of another child, of somebody’s help or of a voided sitting are not met', () => {
    expect(summarize([ruled(round, { voided: true })]).hands).toEqual([]);
    expect(summarize([ruled(round, { notOwnWork: true })]).hands).toEqual([]);
    expect(summarize([{ ...ruled(round), child: 'bo' }]).hands).toEqual([]);
  });
});

describe('what a card takes', () => {
  const facts: readonly PromptId[] = ['mul-2-3', 'mul-3-4', 'mul-4-5', 'mul-5-6', 'mul-6-7'];

  test('is the average over a sitting of the child’s own, the newest five kept', () => {
    const sheets = [1000, 2000, 3000, 4000, 5000, 6000].map((ms) =>
      ruled(satOf(facts, { purpose: 'sheet' }, ms)),
    );
    expect(summarize(sheets.slice(0, 1)).cardMs).toEqual([1000]);
    expect(summarize(sheets).cardMs).toEqual([2000, 3000, 4000, 5000, 6000]);
  });

  test('is not told by copies, by too few cards, nor where no times were kept', () => {
    expect(summarize([ruled(satOf(copyNumbers(1)))]).cardMs).toEqual([]);
    expect(summarize([ruled(satOf(facts.slice(0, 4), { purpose: 'sheet' }))]).cardMs).toEqual([]);
    const sheet = satOf(facts, { purpose: 'sheet' });
    const visits = sheet.visits.map((visit) => ({ ...visit, onsetMs: null, endMs: null }));
    expect(summarize([ruled({ ...sheet, visits })]).cardMs).toEqual([]);
  });
});
