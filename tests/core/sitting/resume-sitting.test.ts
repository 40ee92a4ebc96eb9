import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Away, Sat, Visit } from '../../../src/core/record/sat';
import {
  beginSitting,
  keptAway,
  keptVisit,
  replaySat,
  resumeSitting,
  type SittingEvent,
  type SittingState,
  stepSitting,
} from '../../../src/core/sitting/machine';
import { anyMoves, anyPlan, play } from './random-sitting';
import { Sitter, stamped, timed } from './sitter';

const many = { numRuns: 3000 };
const withTimes = anyPlan.map((plan) => ({ ...plan, keepTimes: true }));

function settled({ plan, visits, away, turn, again, place, shown, ended, endedMs }: SittingState) {
  return { plan, visits, away, turn, again, place, shown, ended, endedMs };
}

function bellOf({ firstOnsetMs, bellAtMs, clockGone }: SittingState) {
  return { firstOnsetMs, bellAtMs, clockGone };
}

describe('replay', { timeout: 60_000 }, () => {
  test('a record replays to the state that wrote it, to the microsecond', () => {
    fc.assert(
      fc.property(withTimes, anyMoves, (plan, moves) => {
        const { end } = play(plan, moves);
        const replayed = replaySat(stamped(end));
        expect(settled(replayed)).toEqual(settled(end));
        if (end.visits.length > 0) expect(bellOf(replayed)).toEqual(bellOf(end));
        expect(replayed.phase).toBe('ended');
      }),
      many,
    );
  });

  test('a record sealed again is the same record, with times or without', () => {
    fc.assert(
      fc.property(anyPlan, anyMoves, (plan, moves) => {
        const sat = stamped(play(plan, moves).end);
        expect(stamped(replaySat(sat))).toEqual(sat);
      }),
      many,
    );
  });

  test('the keys and onsets of a record, sent through the machine again, write the same record', () => {
    fc.assert(
      fc.property(withTimes, anyMoves, (plan, moves) => {
        const inOrder = moves.filter(([gap, { type }]) => gap >= 0 && type !== 'shown');
        const seenOnce = inOrder.flatMap((move) => [move, seenSoon]);
        const sat = stamped(play(plan, seenOnce).end);
        expect(stamped(retype(sat))).toEqual(sat);
      }),
      many,
    );
  });
});

describe('coming back from the journal', { timeout: 60_000 }, () => {
  test('gives the state that wrote it, the open card void, at every step', () => {
    fc.assert(
      fc.property(withTimes, anyMoves, (plan, moves) => {
        for (const state of play(plan, moves).states) {
          const resumed = resumeSitting(plan, state.visits, state.away);
          if (state.ended === 'stopped' || state.ended === 'bell' || state.rang) continue;
          expect(resumed.visits).toEqual(state.visits);
          expect(resumed.away.slice(0, state.away.length)).toEqual(state.away);
          expect(turnOf(resumed)).toEqual(turnOf(state));
          expect(resumed.phase).toBe(state.ended ? 'ended' : 'away');
          if (state.phase === 'away') expect(bellOf(resumed)).toEqual(bellOf(state));
        }
      }),
      { numRuns: 500 },
    );
  });

  test('goes on to the end of every card, with times or without', () => {
    fc.assert(
      fc.property(anyPlan, anyMoves, fc.nat(), (plan, moves, cut) => {
        const { states } = play(plan, moves);
        const state = states[cut % states.length] ?? beginSitting(plan);
        if (state.ended) return;
        let resumed = resumeSitting(
          plan,
          state.visits.map((visit) => keptVisit(plan, visit)),
          state.away.map((span) => keptAway(plan, span)),
        );
        for (let atMs = 1e6, left = 40; resumed.ended === null && left > 0; left -= 1) {
          for (const event of skipping(atMs)) resumed = stepSitting(resumed, event).state;
          atMs += 2000;
        }
        expect(resumed.ended).not.toBeNull();
        expect(new Set(resumed.visits.map(({ place }) => place)).size).toBe(plan.prompts.length);
      }),
      { numRuns: 1000 },
    );
  });

  test('an open card comes back with nothing on it, the same place', () => {
    const plan = timed(['add-6-2', 'add-2-2']);
    const resumed = resumeSitting(plan, [], []);
    expect(resumed).toMatchObject({ phase: 'away', entry: '', place: 0, from: null, clockGone: true });
    expect(resumed.away).toEqual([{ why: 'torn', fromMs: 0, toMs: null, afterVisits: 0 }]);
    const back = stepSitting(resumed, { type: 'returned', atMs: 5 }).state;
    expect(back).toMatchObject({ phase: 'showing', place: 0, away: [{ why: 'torn', fromMs: 0, toMs: 5 }] });
  });

  test('a card opened again comes back empty too', () => {
    const plan = timed(['mul-7-8', 'add-2-2']);
    const { visits } = new Sitter(plan).answer('54', 1000, 2000).shown(2200).key('back', 3000);
    const resumed = new Sitter(plan, resumeSitting(plan, visits, []));
    expect(resumed.state).toMatchObject({ place: 0, entry: '' });
    expect(resumed.returned(4000).state).toMatchObject({ place: 0, entry: '', from: null });
  });

  test('torn off, the bell is put off until the next card is seen', () => {
    const plan = timed(['add-6-2', 'add-2-2']);
    const { visits } = new Sitter(plan).answer('8', 1000, 2000);
    const resumed = new Sitter(plan, resumeSitting(plan, visits, [])).returned(60_000).shown(60_017);
    expect(resumed.state).toMatchObject({ bellAtMs: 46_000 + 60_017 - 2000, clockGone: true });
  });

  test('a span away long over is not taken for the one now, though without times both look alike', () => {
    const plan = timed(['add-6-2', 'add-2-2', 'add-1-1'], { keepTimes: false });
    const { visits } = new Sitter(plan).answer('8', 1000, 2000).answer('4', 2017, 3000);
    const before = { why: 'hidden', fromMs: null, toMs: null, afterVisits: 1 } as const;
    expect(resumeSitting(plan, visits, [before]).away.map(({ why }) => why)).toEqual(['hidden', 'torn']);
    expect(resumeSitting(plan, visits.slice(0, 1), [before]).away).toEqual([before]);
  });

  test('a journal in which every card is done, or the bell had rung, has ended', () => {
    const plan = timed(['add-6-2', 'add-2-2']);
    const done = new Sitter(plan).answer('8', 1000, 2000).answer('4', 2017, 3000);
    expect(settled(resumeSitting(plan, done.visits, []))).toEqual(settled(done.state));
    const rung = new Sitter(plan).answer('8', 1000, 46_001);
    expect(resumeSitting(plan, rung.visits, [])).toMatchObject({
      ended: 'bell',
      endedMs: 46_001,
      rang: true,
    });
  });

  test('without times nothing more counts by a bell that can no longer be known', () => {
    const plan = timed(['add-6-2', 'add-2-2'], { keepTimes: false });
    const before = new Sitter(plan).answer('8', 1000, 2000);
    const journal = before.visits.map((visit) => keptVisit(plan, visit));
    const after = new Sitter(plan, resumeSitting(plan, journal, [])).returned(3000).answer('4', 3017, 4000);
    expect(after.sat().visits.map(({ afterBell }) => afterBell ?? false)).toEqual([false, true]);
  });
});

function turnOf({ turn, again, place, shown }: SittingState) {
  return { turn, again, place, shown };
}

const seenSoon = [17_000, { type: 'shown', by: 'element', ago: null }] as const;

function skipping(atMs: number): readonly SittingEvent[] {
  return [
    { type: 'returned', atMs },
    { type: 'shown', atMs, by: 'element' },
    { type: 'key', key: 'skip', atMs: atMs + 1000, via: 'keys' },
  ];
}

/** The sitting that the events a record tells of give: onsets, keys, spans away, the stop. */
function retype(sat: Sat): SittingState {
  const begun = beginSitting(replaySat(sat).plan);
  return eventsOf(sat).reduce((state, event) => stepSitting(state, event).state, begun);
}

/** Late keys fell before the next card was seen, or soon after, which comes to the same. */
function eventsOf(sat: Sat): readonly SittingEvent[] {
  const spans = (visits: number) => sat.away.filter(({ afterVisits }) => afterVisits === visits);
  const events: SittingEvent[] = spans(0).flatMap((span) => passing(sat, span));
  for (const [index, visit] of sat.visits.entries()) {
    const late = visit.late ?? 0;
    const onTime = visit.keys.length - late;
    events.push(
      { type: 'shown', atMs: visit.onsetMs ?? 0, by: visit.onsetBy === 'paper' ? 'frame' : visit.onsetBy },
      ...pressing(visit.keys.slice(0, onTime)),
    );
    const [first, ...more] = spans(index + 1).map((span) => passing(sat, span));
    const lateKeys = pressing(visit.keys.slice(onTime));
    // Keys late for a void card fell when it was back.
    events.push(
      ...(visit.end === 'left' ? [...(first ?? []), ...lateKeys] : [...lateKeys, ...(first ?? [])]),
    );
    events.push(...more.flat());
  }
  return [...events, { type: 'stopped', atMs: sat.endedMs ?? 0 }];
}

function passing({ endedMs, ended }: Sat, { why, fromMs, toMs }: Away): readonly SittingEvent[] {
  const left: SittingEvent = { type: 'left', why, atMs: fromMs ?? 0 };
  const isLast = ended === 'stopped' && toMs === endedMs;
  return isLast || toMs === null ? [left] : [left, { type: 'returned', atMs: toMs }];
}

function pressing(keys: Visit['keys']): readonly SittingEvent[] {
  return keys.map(([key, atMs, via]) => ({ type: 'key', key, atMs: atMs ?? 0, via }));
}
