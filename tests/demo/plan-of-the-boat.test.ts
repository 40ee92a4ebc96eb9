import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, noHistory } from '../../src/core/household/history';
import { planDay } from '../../src/core/plan/plan-day';
import type { LogRecord } from '../../src/core/record/record';
import type { SittingPlan } from '../../src/core/record/sat';
import type { Day, Id } from '../../src/core/record/stamp';
import { summarize } from '../../src/core/summary/summarize';
import { juniper } from '../../src/demo/juniper';
import { makeBoat } from '../../src/demo/make-boat';
import { teo } from '../../src/demo/teo';
import { wren } from '../../src/demo/wren';
import { dayFacts } from '../../src/state/day-facts';
import { boat, boats, isHistory, isHome, satsOf, today } from './a-boat';

/** A child's day planned from the log alone, as the app plans it. */
function planned(records: readonly LogRecord[], child: Id, day: Day) {
  const household = foldHousehold(records.filter(isHome));
  const history = effectiveHistory(records.filter(isHistory), household);
  const { sittings, changes } = history.children.get(child) ?? noHistory;
  return planDay({
    child,
    today: day,
    ...dayFacts(household, child),
    change: changes.get(day) ?? {},
    sittings,
    summary: summarize(sittings),
  });
}

describe('what was sat', () => {
  test('is at each moment the step that the plan gave from the log as it then was', () => {
    const sats = satsOf(boat.records);
    expect(sats.length).toBeGreaterThan(150);
    for (const sat of sats) {
      const before = boat.records.filter(({ seq }) => seq < sat.seq);
      const steps = planned(before, sat.child, sat.day).steps;
      // Where cards are the child's choice it may go straight to the sheet.
      const step = steps.find(
        (one) => one.what !== 'told' && !(one.what === 'cards' && one.isChoice && sat.purpose !== 'cards'),
      );
      expect(step?.what).toBe(sat.twinOf ? 'twin' : sat.purpose);
      const plan: SittingPlan | null = step && 'plan' in step ? step.plan : null;
      expect(sat).toMatchObject({ ...plan });
    }
  });
});

describe('this morning', () => {
  const days = ['2026-11-22', today, '2027-02-01'] as const;
  const mornings = [...boats, ...days.flatMap((day) => [11, 12, 13].map((seed) => makeBoat(day, seed)))];
  const dayOf = (records: readonly LogRecord[]) => satsOf(records).at(-1)?.day ?? '';

  test('Wren has done everything', () => {
    for (const { records } of mornings) {
      const plan = planned(records, wren.id, dayOf(records));
      expect(plan.isDone).toBe(true);
      expect(plan.steps.map(({ what }) => what)).toEqual(['piece']);
    }
  });

  test('Teo has sat his sheet with the clock, and a row waits for him', () => {
    for (const { records } of mornings) {
      const plan = planned(records, teo.id, dayOf(records));
      expect(plan.sheets).toHaveLength(1);
      expect(plan.sheets[0]?.ruled.sat.clock?.sight).toBe('thread');
      expect(['loose', 'thin']).toContain(plan.sheets[0]?.marked.band);
      expect(plan.steps[0]?.what).toBe('row');
      expect(plan.isDone).toBe(false);
    }
  });

  test('Juniper has not begun; her sheet has the clock, and before it stands nothing but cards she may choose', () => {
    for (const { records } of mornings) {
      const { steps, sheets } = planned(records, juniper.id, dayOf(records));
      expect(sheets).toEqual([]);
      const [first] = steps.filter((step) => step.what !== 'cards' || !step.isChoice);
      expect(first?.what).toBe('sheet');
      expect(first && 'plan' in first && first.plan.clock?.allowanceMs).toBe(45_000);
    }
  });
});
