import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Visit } from '../../../src/core/record/sat';
import { toMicro } from '../../../src/core/sitting/bell';
import { beginSitting, guardMs, type SittingState, stepSitting } from '../../../src/core/sitting/machine';
import { anyMoves, anyPlan, play } from './random-sitting';

const many = { numRuns: 1000 };

function holds(law: (run: ReturnType<typeof play>) => void): void {
  fc.assert(
    fc.property(anyPlan, anyMoves, (plan, moves) => law(play(plan, moves))),
    many,
  );
}

function onTime({ keys, late = 0 }: Visit): Visit['keys'] {
  return keys.slice(0, keys.length - late);
}

describe('laws of every sitting', { timeout: 60_000 }, () => {
  test('random sittings reach every way a card and a sitting can end', () => {
    const seen = new Map<string, number>();
    const note = (what: string) => seen.set(what, (seen.get(what) ?? 0) + 1);
    for (const [plan, moves] of fc.sample(fc.tuple(anyPlan, anyMoves), { numRuns: 1500, seed: 25 })) {
      const { end } = play(plan, moves);
      note(end.ended ?? 'open');
      if (end.clockGone) note('clockGone');
      for (const visit of end.visits) {
        note(visit.end);
        note(visit.took ?? 'untaken');
        if (visit.late) note('late');
        if (visit.from !== undefined) note('openedAgain');
        if (visit.afterBell) note('afterBell');
        if (visit.shown) note('shown');
      }
    }
    const wanted = ['finished', 'bell', 'stopped', 'clockGone', 'taken', 'skipped', 'back', 'left'];
    for (const what of [...wanted, 'itself', 'done', 'late', 'openedAgain', 'afterBell', 'shown'])
      expect(seen.get(what) ?? 0, what).toBeGreaterThan(50);
  });

  test('every key on a card is logged once, in order, and no key anywhere else', () => {
    holds(({ states, events, end }) => {
      const logged = end.visits.flatMap(({ keys }) => keys).length;
      const counted = events.filter((event, index) => {
        const before = states[index];
        if (event.type !== 'key' || !before) return false;
        const isUp = before.phase === 'answering' || (before.phase === 'showing' && before.visits.length > 0);
        return isUp;
      }).length;
      expect(logged).toBe(counted);
    });
  });

  test('what was given is what the keys on time spell, and late keys spell nothing', () => {
    holds(({ end }) => {
      for (const visit of end.visits) {
        let entry = visit.from ?? '';
        for (const [key] of onTime(visit)) {
          if (key === 'back') entry = entry.slice(0, -1);
          else if (key >= '0' && key <= '9' && entry.length < 4) entry += key;
        }
        if (visit.end === 'taken') expect(visit.given).toBe(entry);
        else expect(visit.given).toBeNull();
      }
    });
  });

  test('a card never holds more than four digits', () => {
    holds(({ states }) => {
      expect(states.filter(({ entry }) => !/^\d{0,4}$/.test(entry))).toEqual([]);
    });
  });

  test('an answer taken by itself has as many digits as the true one, and only where the plan allows', () => {
    const lengths = [1, 2, 1, 1, 3, 2, 2];
    const ids = ['add-6-2', 'mul-7-8', 'sub-9-9', 'div-56-7', 'mul-12-12', 'copy-47', 'add-9-4'];
    holds(({ end: { plan, visits } }) => {
      for (const { took, given, place } of visits) {
        if (took !== 'itself') continue;
        expect(plan.takesItself && plan.clock !== null).toBe(true);
        expect(given).toHaveLength(lengths[ids.indexOf(plan.prompts[place] ?? '')] ?? 0);
      }
    });
  });

  test('without an interruption an answer is after the bell exactly when its key fell after it', () => {
    fc.assert(
      fc.property(anyPlan, anyMoves, (plan, moves) => {
        const seenInTime = moves.filter(([, made]) => made.type !== 'shown' || made.ago === null);
        const { visits, away, firstOnsetMs } = play(plan, seenInTime).end;
        fc.pre(plan.clock !== null && away.length === 0 && firstOnsetMs !== null);
        const bellMs = toMicro((firstOnsetMs ?? 0) + (plan.clock?.allowanceMs ?? 0));
        for (const { end: how, endMs, afterBell } of visits)
          if (how === 'taken') expect(afterBell ?? false).toBe((endMs ?? 0) > bellMs);
        expect(visits.filter(({ afterBell }) => afterBell).length).toBeLessThanOrEqual(1);
      }),
      many,
    );
  });

  test('without a clock there is no bell', () => {
    holds(({ end, states }) => {
      if (end.plan.clock) return;
      expect(states.every(({ rang, bellAtMs }) => !rang && bellAtMs === null)).toBe(true);
      expect(end.ended).not.toBe('bell');
      expect(end.visits.every(({ afterBell }) => afterBell === undefined)).toBe(true);
    });
  });

  test('the first key of a later card never falls within the guard of the onset it was judged by', () => {
    holds(({ states, events }) => {
      for (const [index, event] of events.entries()) {
        const before = states[index];
        const after = states[index + 1];
        if (event.type !== 'key' || !before || !after || before.visits.length === 0) continue;
        const isTooSoon = before.onsetMs === null || toMicro(event.atMs - before.onsetMs) < guardMs;
        if (before.phase === 'answering' && isTooSoon) expect(untouched(after)).toEqual(untouched(before));
      }
    });
  });

  test('a sitting that was finished has decided every place, the skipped ones offered twice', () => {
    holds(({ end }) => {
      if (end.ended !== 'finished') return;
      for (const place of end.plan.prompts.keys()) {
        const decided = end.visits.filter((visit) => visit.place === place && visit.end !== 'back');
        const last = decided.at(-1);
        expect(['taken', 'skipped']).toContain(last?.end);
        if (last?.end === 'skipped')
          expect(decided.filter((visit) => visit.end === 'skipped').length).toBeGreaterThanOrEqual(2);
      }
    });
  });

  test('a state once made is never touched: frozen all through, it steps on the same', () => {
    fc.assert(
      fc.property(anyPlan, anyMoves, (plan, moves) => {
        const { events, end } = play(plan, moves);
        let state = frozen(beginSitting(plan));
        for (const event of events) state = frozen(stepSitting(state, event).state);
        expect(state).toEqual(end);
      }),
      { numRuns: 300 },
    );
  });
});

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) frozen(part);
  }
  return value;
}

function untouched({ place, entry, showing, turn, ended, keys }: SittingState) {
  return { place, entry, showing, turn, ended, keys };
}
