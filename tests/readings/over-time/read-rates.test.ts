import { expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import type { Sat } from '../../../src/core/record/sat';
import { readRates } from '../../../src/readings/over-time/read-rates';
import { readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import { type Did, logOf, sheetOf } from '../made-log';

const facts: readonly FactId[] = ['mul-4-6', 'mul-4-7', 'mul-4-8', 'mul-4-9'];
const sheet = (at: number, over: Partial<Sat> = {}) =>
  sheetOf(
    at,
    facts.map((fact): Did => [fact, 1500 - 40 * at]),
    over,
  );

const sheets = [0, 1, 2, 4, 5, 6, 7].map((at) => sheet(at));
const lookBack = sheet(3, { set: null, lookBack: true });
const spread = sheet(3, { set: null, spread: { spread: 'asked', part: 0 } });

it('look-backs and spreads stand in no line and break none', () => {
  for (const other of [lookBack, spread]) {
    const sats = [...sheets, other].sort((x, y) => x.seq - y.seq);
    expect(readRates(logOf(sats, facts))).toEqual(readRates(logOf(sheets, facts)));
  }
  const [facts0] = readRates(logOf(sheets, facts)).filter(({ withClock }) => !withClock);
  expect(facts0?.stretches.map(({ points, line }) => [points.length, line !== null])).toEqual([[7, true]]);
});

it('another set does break a line', () => {
  const moved = sheets.map((sat, at) => (at < 3 ? sat : { ...sat, set: 'times-5' }));
  const [facts0] = readRates(logOf(moved, facts)).filter(({ withClock }) => !withClock);
  expect(facts0?.stretches.map(({ points, changed }) => [points.length, changed])).toEqual([
    [3, []],
    [4, ['set']],
  ]);
});

it('a look-back is read as a sheet, and told apart', () => {
  const readings = readSittings(logOf([sheet(0), lookBack], facts)).sittings;
  expect(readings.map((reading) => reading.lookBack)).toEqual([false, true]);
});
