import { expect, test } from 'vitest';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { readClockEffect } from '../../../src/readings/over-time/read-clock-effect';
import { readRates } from '../../../src/readings/over-time/read-rates';
import { readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import { logOf } from './run';
import { yearsOf } from './ten-years';

// What it takes is measured by `npm run bench`, never here: the machine that tests may be busy.
test('ten years of one child, 1,800 sheets, are read in one go', { timeout: 120_000 }, () => {
  const { made, sats } = yearsOf(1, 10);
  const log = logOf(made, sats);
  const { sittings } = readSittings(log);
  const facts = readFacts(log);
  const effect = readClockEffect(log);
  const rates = readRates(log);
  expect(sittings).toHaveLength(1800);
  expect(facts.size).toBeGreaterThan(300);
  expect(effect.facts).toBeGreaterThan(0);
  expect(rates.flatMap(({ stretches }) => stretches).length).toBeGreaterThan(100);
});
