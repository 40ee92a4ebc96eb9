import fc from 'fast-check';
import type { FactId } from '../../../src/core/fact/fact';
import { operations } from '../../../src/core/fact/fact-list';
import type { DayChange, HouseholdRecord, Ruling } from '../../../src/core/record/household-record';
import type { Draft, HistoryRecord, LogRecord } from '../../../src/core/record/record';
import type { Sat, Visit } from '../../../src/core/record/sat';
import { recordVersion, type Stamp } from '../../../src/core/record/stamp';

/** A stamp for a record written out by hand: its counter is its place in the story. */
export function stamped(seq: number, over: Partial<Stamp> = {}): Stamp {
  return { id: `r${seq}`, v: recordVersion, seq, device: 'tablet', at: 1_700_000_000_000 + seq, ...over };
}

/** The drafts as records with counters 1, 2, 3 … and ids r1, r2, r3 … */
export function story<D extends Draft>(...drafts: readonly D[]): (D & Stamp)[] {
  return drafts.map((draft, index) => ({ ...draft, ...stamped(index + 1) }));
}

/** A card answered: `given` null skips it. */
export function visit(place: number, given: string | null, atMs = place * 2000): Visit {
  const keys = given === null ? (['skip'] as const) : (Array.from(given) as Visit['keys'][number][0][]);
  return {
    place,
    onsetMs: atMs,
    onsetBy: 'element',
    keys: keys.map((key, index) => [key, atMs + 900 + index * 100, 'touch'] as const),
    end: given === null ? 'skipped' : 'taken',
    endMs: atMs + 1500,
    given,
    took: given === null ? null : 'itself',
  };
}

/** A sitting answered as listed: one entry a prompt, null for a skip. */
export function satOf(
  child: string,
  day: string,
  seq: number,
  answers: readonly (readonly [FactId, string | null])[],
  over: Partial<Sat> = {},
): Sat {
  return {
    ...stamped(seq, { id: `s${seq}` }),
    kind: 'sat',
    child,
    purpose: 'sheet',
    of: null,
    set: 'times-2',
    seed: 7,
    prompts: answers.map(([fact]) => fact),
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: true,
    day,
    offsetMin: 60,
    zone: 'Europe/Paris',
    startedAt: 1_700_000_000_000,
    clockStepMs: 0.1,
    isolated: false,
    visits: answers.map(([, given], place) => visit(place, given)),
    away: [],
    ended: 'finished',
    endedMs: answers.length * 2000,
    ...over,
  };
}

export const children = ['ann', 'bo', 'cy'] as const;
export const days = ['2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05', '2026-03-06'] as const;
export const facts: readonly FactId[] = ['mul-2-3', 'mul-2-4', 'mul-2-5', 'div-6-2', 'add-7-5', 'sub-9-4'];
const sets = ['times-2', 'own-a', 'own-b'] as const;

const child = fc.constantFrom(...children);
const set = fc.constantFrom(...sets);
const day = fc.constantFrom(...days);
const someFacts = fc.uniqueArray(fc.constantFrom(...facts), { maxLength: 4 });
// Ids of records that may exist, may come later or may never come.
const anyTarget = fc.integer({ min: 0, max: 45 }).map((index) => `r${index}`);

const ruling: fc.Arbitrary<Ruling> = fc.oneof(
  fc.record({ what: fc.constant('accept' as const), place: fc.nat(3) }),
  fc.record({ what: fc.constant('slip' as const), place: fc.nat(3), slip: fc.boolean() }),
  fc.constant({ what: 'void' as const }),
  fc.record({ what: fc.constant('wrongChild' as const), child }),
  fc.constant({ what: 'notOwnWork' as const }),
  fc.constant({ what: 'bandAnyway' as const }),
  fc.record({ what: fc.constant('rows' as const), rows: fc.nat(3) }),
);

const undone = fc.record({ kind: fc.constant('undone' as const), target: anyTarget });

const householdDraft: fc.Arbitrary<Draft> = fc.oneof(
  fc.record({ kind: fc.constant('childAdded' as const), child, name: fc.string(), edge: fc.nat(5) }),
  fc.record(
    {
      kind: fc.constant('childChanged' as const),
      child,
      name: fc.string(),
      edge: fc.nat(5),
      archived: fc.boolean(),
    },
    { requiredKeys: ['kind', 'child'] },
  ),
  fc.record({
    kind: fc.constant('setMade' as const),
    set,
    name: fc.string(),
    facts: someFacts,
    removed: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('setStarted' as const), child, set }),
  fc.record({ kind: fc.constant('setKept' as const), child, set, kept: fc.boolean() }),
  fc.record({ kind: fc.constant('factsTicked' as const), child, facts: someFacts, known: fc.boolean() }),
  fc.record({
    kind: fc.constant('childSettingsChanged' as const),
    child,
    changes: fc.record(
      { length: fc.nat(100), timed: fc.boolean(), spokenChecks: fc.boolean(), spokenEvery: fc.nat(20) },
      { requiredKeys: [] },
    ),
  }),
  fc.record({
    kind: fc.constant('householdSettingsChanged' as const),
    changes: fc.record({ sounds: fc.boolean(), keySound: fc.boolean() }, { requiredKeys: [] }),
  }),
  fc.record({
    kind: fc.constant('trialDrawn' as const),
    child,
    set,
    plan: fc.constantFrom('eight' as const, 'ten' as const),
    order: fc.constant(['thread', 'noClock'] as const),
  }),
  fc.record({ kind: fc.constant('trialStopped' as const), child, trial: anyTarget }),
  fc.record({
    kind: fc.constant('spreadAsked' as const),
    child,
    ops: fc.subarray([...operations], { minLength: 1 }),
  }),
  fc.record({
    kind: fc.constant('lineWritten' as const),
    fact: fc.constantFrom(...facts),
    line: fc.option(fc.string()),
  }),
  fc.record({
    kind: fc.constant('spokenChecked' as const),
    child,
    day,
    answers: fc.array(
      fc.record({
        fact: fc.constantFrom(...facts),
        came: fc.constantFrom('right' as const, 'helped' as const, 'notYet' as const),
      }),
      { maxLength: 3 },
    ),
  }),
  fc.record({ kind: fc.constant('yearBegun' as const), day, name: fc.string() }),
  fc.record({
    kind: fc.constant('remarkWritten' as const),
    child,
    from: day,
    to: day,
    text: fc.constantFrom('', 'Reads it aloud', 'Fewer fingers'),
  }),
  undone,
  undone,
);

const dayChange: fc.Arbitrary<DayChange> = fc.record(
  {
    timed: fc.boolean(),
    length: fc.constantFrom(5, 10),
    skip: fc.boolean(),
    school: fc.boolean(),
    straight: fc.boolean(),
  },
  { requiredKeys: [] },
);

interface Place {
  readonly seq: number;
  readonly device: string;
}

const place: fc.Arbitrary<Place> = fc.record({
  seq: fc.integer({ min: 1, max: 30 }),
  device: fc.constantFrom('tablet', 'phone'),
});

const answer = fc.tuple(fc.constantFrom(...facts), fc.constantFrom('6', '8', '10', '3', '12', '5', null));

const sitting = fc.record({
  child,
  day,
  answers: fc.array(answer, { minLength: 1, maxLength: 6 }),
  purpose: fc.constantFrom<Sat['purpose']>(
    ...(['sheet', 'sheet', 'sheet', 'row', 'mending', 'practice', 'cards', 'firstTry'] as const),
  ),
  lookBack: fc.option(fc.constant(true as const), { freq: 4 }),
  shownFirst: fc.option(fc.subarray([0, 1, 2])),
  ended: fc.constantFrom<Sat['ended']>('finished', 'finished', 'bell', 'torn', 'stopped'),
  timed: fc.boolean(),
});

const printed = fc.record({
  child,
  day,
  forDay: day,
  set,
  seed: fc.nat(9999),
  shape: fc.record({
    length: fc.constantFrom(5, 10, 25),
    layout: fc.constantFrom('across' as const, 'stacked' as const),
    hasKept: fc.boolean(),
  }),
  facts: someFacts,
});

/** A history of sittings, day changes and printed sheets, ids r0 to r45, as two devices might have made it. */
const anyHistory: fc.Arbitrary<HistoryRecord[]> = fc
  .array(fc.tuple(place, fc.oneof(sitting, fc.record({ child, day, change: dayChange }), printed)), {
    maxLength: 20,
  })
  .map((made) =>
    made.map(([{ seq, device }, body], index): HistoryRecord => {
      const own = stamped(seq, { id: `r${index + 26}`, device });
      if ('change' in body) return { ...own, kind: 'dayChanged', ...body };
      if ('shape' in body) return { ...own, kind: 'sheetPrinted', ...body };
      const clock = body.timed ? ({ allowanceMs: 45_000, sight: 'thread' } as const) : null;
      const { purpose, ended, lookBack, shownFirst } = body;
      return {
        ...satOf(body.child, body.day, seq, body.answers),
        ...{ ...own, purpose, ended, clock },
        ...(lookBack && purpose === 'sheet' && { lookBack }),
        ...(shownFirst && purpose === 'cards' && { shownFirst }),
      };
    }),
  );

/** Household records, ids r0 to r25, with rulings and undoings that aim at anything, also in circles. */
const anyHousehold: fc.Arbitrary<HouseholdRecord[]> = fc
  .array(fc.tuple(place, householdDraft), { maxLength: 26 })
  .map((made) =>
    made.map(
      ([{ seq, device }, draft], index) =>
        ({ ...draft, ...stamped(seq, { id: `r${index}`, device }) }) as HouseholdRecord,
    ),
  );

/** Rulings on sittings of a history, each true to its target's child and day. */
function rulingsFor(history: readonly HistoryRecord[]): fc.Arbitrary<HouseholdRecord[]> {
  const sats = history.filter((record): record is Sat => record.kind === 'sat');
  if (sats.length === 0) return fc.constant([]);
  return fc
    .array(fc.tuple(fc.constantFrom(...sats), ruling, fc.integer({ min: 1, max: 9 })), { maxLength: 12 })
    .map((made) =>
      made.map(([sat, decided, after], index): HouseholdRecord => {
        const own = stamped(sat.seq + after, { id: `q${index}` });
        return {
          ...own,
          kind: 'ruled',
          child: sat.child,
          target: sat.id,
          targetDay: sat.day,
          ruling: decided,
        };
      }),
    );
}

/** The household's part and the history's of one made-up log, perhaps with tombstones. */
export const anyLog: fc.Arbitrary<{ home: HouseholdRecord[]; history: HistoryRecord[] }> = anyHistory.chain(
  (history) =>
    fc
      .record({
        household: anyHousehold,
        rulings: rulingsFor(history),
        deleted: fc.option(fc.tuple(child, place), { freq: 2 }),
      })
      .map(({ household, rulings, deleted }) => ({
        history,
        home: [...household, ...rulings, ...(deleted ? [tombstone(...deleted)] : [])],
      })),
);

function tombstone(dead: string, { seq, device }: Place): HouseholdRecord {
  return { ...stamped(seq, { id: `t-${dead}`, device }), kind: 'childDeleted', child: dead };
}

/** The records in some other order, some of them twice. */
export function jumbled<R extends LogRecord>(records: readonly R[]): fc.Arbitrary<R[]> {
  if (records.length === 0) return fc.constant([]);
  const all = fc.shuffledSubarray([...records], { minLength: records.length });
  return fc
    .tuple(all, fc.array(fc.tuple(fc.constantFrom(...records), fc.nat(records.length)), { maxLength: 10 }))
    .map(([shuffled, extra]) =>
      extra.reduce((list, [record, at]) => list.toSpliced(at, 0, structuredClone(record)), shuffled),
    );
}
