import { expect, test } from 'vitest';
import { childReading } from '../../../src/parent/reading/child-reading';
import { saidOfClockCost, saidOfReadiness } from '../../../src/parent/reading/said';
import { boatDesk, crew } from '../boat-desk';

const desk = boatDesk();

function readingOf(id: string) {
  const household = desk.household.value;
  const history = desk.history.value;
  const child = household.children.find((one) => one.id === id);
  if (!child || !history) throw new Error(id);
  return childReading(household, history, child);
}

test('beside a sheet that was rushed nothing is said of what the clock costs', () => {
  const reading = readingOf(crew.teo.id);
  const sheets = reading.log.sats.filter(({ ruled: { sat } }) => sat.purpose === 'sheet');
  const isRushed = (id: string) =>
    reading.sitting(id)?.verdicts.some(({ name }) => name === 'rushed') ?? false;
  const rushed = sheets.map(({ ruled }) => ruled.sat.id).filter(isRushed);
  expect(rushed.length).toBeGreaterThan(0);
  for (const sheet of rushed) expect(saidOfClockCost(reading, sheet)).toEqual([]);
});

test('where moving on is proposed, days with the clock that go worse are told with it and not beside it', () => {
  const reading = readingOf(crew.juniper.id);
  expect(reading.readiness?.isReady).toBe(true);
  expect(saidOfClockCost(reading, null)).toEqual([]);
  expect(saidOfReadiness(reading).map(({ text }) => text)).toEqual([
    expect.stringContaining('turns the clock off too. On days with it Juniper has been less often right'),
  ]);
});
