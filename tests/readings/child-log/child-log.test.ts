import { expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import type { Purpose } from '../../../src/core/record/sat';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { readRates } from '../../../src/readings/over-time/read-rates';
import { readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import { type Did, logOf, sheetOf } from '../made-log';

const facts: readonly FactId[] = ['mul-4-6', 'mul-4-7', 'mul-4-8'];
const did: readonly Did[] = facts.map((fact) => [fact, 1200]);
const answersIn = (purpose: Purpose) => logOf([sheetOf(0, did, { purpose })], facts).sats[0]?.answers ?? [];

it('own answers are those of sheets, rows and first tries; no card round, mending, line or copy gives any', () => {
  for (const purpose of ['sheet', 'row', 'firstTry'] as const) {
    expect(answersIn(purpose).map(({ fact }) => fact.id)).toEqual(facts);
  }
  for (const purpose of ['cards', 'mending', 'practice', 'lines'] as const) {
    expect(answersIn(purpose), purpose).toEqual([]);
  }
});

it('a first try counts as answered without the clock, and for no rate', () => {
  expect(answersIn('firstTry').every(({ withClock, onRow }) => !withClock && !onRow)).toBe(true);
  const log = logOf([sheetOf(0, did, { purpose: 'firstTry' })], facts);
  expect(readFacts(log).get('mul-4-6')).toMatchObject({ answers: 1, right: 1 });
  expect(readRates(log).flatMap(({ stretches }) => stretches)).toEqual([]);
  expect(readSittings(log).sittings).toEqual([]);
});

it('a card round is in no reading of speed, however quick', () => {
  const sheets = [0, 1, 2].map((at) => sheetOf(at, did));
  const cards = sheetOf(
    3,
    did.map(([fact]): Did => [fact, 350]),
    { purpose: 'cards' },
  );
  const [without, withCards] = [logOf(sheets, facts), logOf([...sheets, cards], facts)];
  expect(readFacts(withCards)).toEqual(readFacts(without));
  expect(readRates(withCards)).toEqual(readRates(without));
  expect(readSittings(withCards)).toEqual(readSittings(without));
});

it('a fact right at a first try and on two sheets is new no longer', () => {
  const wrong: readonly Did[] = facts.map((fact) => [fact, 1500, '1']);
  const right = (at: number, purpose: Purpose) => sheetOf(at, did, { purpose });
  const names = (first: Purpose) => {
    const log = logOf([right(0, first), right(1, 'sheet'), right(2, 'sheet'), sheetOf(3, wrong)], facts);
    return readSittings(log)
      .sittings.at(-1)
      ?.verdicts.map(({ name }) => name);
  };
  expect(names('cards')).toContain('new');
  expect(names('firstTry')).not.toContain('new');
});
