import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../src/core/household/fold-household';
import { noRulings } from '../../src/core/marking/sat-rulings';
import { type PaperMark, paperSat } from '../../src/core/paper/paper-sat';
import type { HouseholdRecord } from '../../src/core/record/household-record';
import type { Sat } from '../../src/core/record/sat';
import { setById } from '../../src/core/set/teaching-sets';
import { readChildLog } from '../../src/readings/child-log/child-log';
import { readHousehold } from '../../src/readings/document/read-household';
import { readError } from '../../src/readings/errors/read-error';
import { wrongIn } from '../../src/readings/errors/wrong-on-sheets';
import { readFacts } from '../../src/readings/facts/read-facts';
import { conditionsOf, differences } from '../../src/readings/rates/conditions';
import { readSittings } from '../../src/readings/sitting-verdict/read-sittings';
import { satOf, stamped, story } from '../core/household/made-records';

const facts = setById('times-7')?.facts ?? [];
const home: readonly HouseholdRecord[] = story(
  { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 0 },
  { kind: 'setStarted', child: 'ann', set: 'times-7' },
);

function onPaper(
  seq: number,
  day: string,
  marks: ReadonlyMap<number, PaperMark> = new Map(),
  timed = false,
): Sat {
  const plan = {
    child: 'ann',
    purpose: 'sheet',
    of: null,
    set: 'times-7',
    seed: seq,
    prompts: facts,
    clock: timed ? ({ allowanceMs: 45_000, sight: 'thread' } as const) : null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: false,
  } as const;
  const start = { day, offsetMin: 0, zone: 'UTC', startedAt: 0 };
  return {
    ...paperSat(plan, { reached: facts.length, marks }, start),
    ...stamped(seq, { id: `p${seq}` }),
  };
}

const dayOf = (at: number) => `2026-03-${String(at + 1).padStart(2, '0')}`;

function logOf(sats: readonly Sat[]) {
  const [child] = foldHousehold(home).children;
  if (!child) throw new Error('no child');
  const sittings = sats.map((sat) => ({ sat, child: 'ann', rulings: noRulings }));
  return readChildLog(
    child,
    { sittings, changes: new Map(), printed: [] },
    (id) => setById(id)?.facts ?? null,
  );
}

describe('what the readings make of paper', () => {
  test('a fact right on paper for weeks is called neither quick nor slow: it comes right, without times', () => {
    const log = logOf(Array.from({ length: 20 }, (_, at) => onPaper(at + 1, dayOf(at))));
    for (const { state, notEnough, thinkMs } of readFacts(log).values())
      expect([state, notEnough, thinkMs]).toEqual(['notEnough', 'noTimes', null]);
  });

  test('a single quick answer on the screen does not make twenty on paper quick', () => {
    const paper = Array.from({ length: 20 }, (_, at) => onPaper(at + 1, dayOf(at)));
    const keyed = satOf(
      'ann',
      dayOf(21),
      50,
      facts.map((fact) => [fact, String(Number(fact.split('-')[1]) * Number(fact.split('-')[2]))] as const),
    );
    for (const { state } of readFacts(logOf([...paper, { ...keyed, set: 'times-7' }])).values())
      expect(['quick', 'slow']).not.toContain(state);
  });

  test('a short sheet says that there are no times, and nothing of slow hands or hurry', () => {
    const marks = new Map(facts.map((_, at): [number, PaperMark] => [at, { is: 'wrong', given: null }]));
    const before = Array.from({ length: 8 }, (_, at) => onPaper(at + 1, dayOf(at)));
    const reading = readSittings(logOf([...before, onPaper(20, dayOf(9), marks, true)])).sittings.at(-1);
    expect(reading?.verdicts).toEqual([{ name: 'cannotTell', why: 'noTimes' }]);
  });

  test('wrong without what was written looks like nothing; a digit doubled by a pencil is no slip of a key', () => {
    const marks = new Map<number, PaperMark>([
      [0, { is: 'wrong', given: null }],
      [1, { is: 'blank' }],
      [2, { is: 'wrong', given: '211' }],
    ]);
    const log = logOf([onPaper(1, dayOf(0), marks)]);
    const [read] = log.sats;
    if (!read) throw new Error('no sitting');
    const wrong = wrongIn(log, read.ruled);
    expect(wrong.map(({ place }) => place)).toEqual([1, 2]);
    expect(wrong.map((one) => readError(one).name)).toEqual(['omission', 'other']);
  });

  test('paper is one condition, wherever it was entered, and never one with a screen', () => {
    const paper = onPaper(1, dayOf(0));
    expect(conditionsOf(paper)).toMatchObject({ entry: 'paper', device: 'paper', onsetBy: 'none' });
    expect(differences(conditionsOf(paper), conditionsOf({ ...paper, device: 'phone' }))).toEqual([]);
    const keyed = satOf(
      'ann',
      dayOf(1),
      2,
      facts.map((fact) => [fact, '7'] as const),
      { set: 'times-7' },
    );
    expect(differences(conditionsOf(paper), conditionsOf(keyed))).toContain('entry');
  });

  test('every reading of any mixture of paper and screen is a number or nothing', () => {
    const sitting = fc.record({
      isPaper: fc.boolean(),
      timed: fc.boolean(),
      wrong: fc.array(fc.nat(facts.length - 1), { maxLength: 6 }),
    });
    fc.assert(
      fc.property(fc.array(sitting, { minLength: 1, maxLength: 14 }), (all) => {
        const sats = all.map(({ isPaper, timed, wrong }, at) => {
          const marks = new Map(
            wrong.map((place): [number, PaperMark] => [place, { is: 'wrong', given: '1' }]),
          );
          const paper = onPaper(at + 10, dayOf(at), marks, timed);
          if (isPaper) return paper;
          const answers = paper.visits.map(({ given }, place) => [facts[place] ?? 'mul-7-1', given] as const);
          return satOf('ann', dayOf(at), at + 10, answers, { set: 'times-7', clock: paper.clock });
        });
        const numbers: unknown[] = [];
        JSON.stringify(readHousehold([...home, ...sats]), (_, value) => {
          if (typeof value === 'number') numbers.push(value);
          return value;
        });
        expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});
