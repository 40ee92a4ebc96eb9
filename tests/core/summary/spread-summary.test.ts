import { expect, test } from 'vitest';
import { planSpread } from '../../../src/core/plan/plan-spread';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { resumeSummary, summarize } from '../../../src/core/summary/summarize';
import { ruled, sit } from '../plan/sit';

const spread = { id: 'spread-1', ops: ['add'] } as const;
const half = (part: 0 | 1, id = 'spread-1') =>
  sit(planSpread('ann', { ...spread, id }, part, defaultChildSettings), `2026-03-0${part + 1}`, {
    act: () => 'right',
  });

test('the halves of a spread sat to their end are known, from a checkpoint too', () => {
  const sittings = [ruled(half(0)), ruled(half(1))];
  expect(summarize(sittings).spread).toEqual({ spread: 'spread-1', parts: [0, 1] });
  expect(resumeSummary(summarize(sittings.slice(0, 1)), sittings.slice(1)).spread).toEqual(
    summarize(sittings).spread,
  );
});

test('another spread begins anew', () => {
  expect(summarize([ruled(half(0)), ruled(half(1, 'spread-2'))]).spread).toEqual({
    spread: 'spread-2',
    parts: [1],
  });
});

test('a half that another child sat, or that was ruled out, is not sat', () => {
  const other = { ...ruled(half(0)), child: 'bo' };
  expect(summarize([other]).spread).toBeNull();
  expect(summarize([ruled(half(0), { voided: true })]).spread).toBeNull();
  expect(summarize([ruled(half(0), { notOwnWork: true })]).spread).toBeNull();
});

test('its answers count for the facts like those of any sheet without the clock', () => {
  const sat = half(0);
  const summary = summarize([ruled(sat)]);
  expect(summary.finished).toBe(1);
  expect(summary.untimed).toHaveLength(sat.prompts.length);
});
