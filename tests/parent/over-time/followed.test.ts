import { expect, test } from 'vitest';
import { scaleLimit } from '../../../src/core/marking/band';
import { median } from '../../../src/core/marking/median';
import { causesOverTime } from '../../../src/parent/over-time/cause-shares';
import { bandLines, countsAtEase } from '../../../src/parent/over-time/counts';
import { minutesADay } from '../../../src/parent/over-time/minutes';
import { thinkTimes } from '../../../src/parent/over-time/think-times';
import { type ChildReading, childReading } from '../../../src/parent/reading/child-reading';
import { boatDesk, crew } from '../boat-desk';

const desk = boatDesk();

function readingOf(id: string): ChildReading {
  const household = desk.household.value;
  const history = desk.history.value;
  const child = household.children.find((one) => one.id === id);
  if (!child || !history) throw new Error(id);
  return childReading(household, history, child);
}

const wren = readingOf(crew.wren.id);
const teo = readingOf(crew.teo.id);
const juniper = readingOf(crew.juniper.id);

test('a child’s readings are read once for the same history', () => {
  expect(readingOf(crew.teo.id)).toBe(teo);
  expect(readingOf(crew.teo.id).facts).toBe(teo.facts);
});

test('minutes are all of a day’s sittings together', () => {
  const days = minutesADay(teo.log.sats);
  expect(new Set(days.map(({ day }) => day)).size).toBe(days.length);
  const all = teo.log.sats.reduce((sum, { ruled }) => sum + (ruled.sat.endedMs ?? 0), 0);
  expect(days.reduce((sum, { minutes }) => sum + minutes, 0)).toBeCloseTo(all / 60_000, 6);
  expect(days.reduce((sum, { sittings }) => sum + sittings, 0)).toBe(teo.log.sats.length);
});

test('think times come from sheets without the clock alone', () => {
  const points = thinkTimes(juniper.log.sats).flatMap((stretch) => stretch.points);
  expect(points.length).toBeGreaterThan(10);
  expect(points.every(({ conditions }) => conditions.allowanceMs === null)).toBe(true);
});

test('a usual think time is the middle one of a sheet’s right answers, less the hands', () => {
  const [point] = thinkTimes(juniper.log.sats).flatMap((stretch) => stretch.points);
  const read = juniper.log.sats.find(
    ({ ruled }) => ruled.sat.purpose === 'sheet' && !ruled.sat.clock && ruled.sat.day === point?.day,
  );
  const times = read?.answers.flatMap(({ outcome, firstKeyMs, handMs }) =>
    outcome === 'right' && firstKeyMs !== null && handMs !== null ? [Math.max(0, firstKeyMs - handMs)] : [],
  );
  expect(point?.value).toBeCloseTo((median(times ?? []) ?? 0) / 1000, 6);
});

test('the counts without the clock are right answers of whole sheets', () => {
  const points = countsAtEase(wren.log.sats).flatMap((stretch) => stretch.points);
  expect(points.length).toBeGreaterThan(20);
  expect(points.every(({ value, ceiling }) => ceiling === 10 && value <= 10)).toBe(true);
});

test('bands begin at the limits scaled for each stretch’s length, named once', () => {
  const counts = juniper.rates.find(({ rate }) => rate === 'count')?.stretches ?? [];
  const { limits } = juniper.child.settings;
  const names = desk.household.value.settings.bandNames;
  const lines = bandLines(counts, limits, names);
  expect(lines).toHaveLength(counts.length * 3);
  expect(lines.slice(0, 3).map(({ to }) => to.value)).toEqual(
    [limits.firm, limits.even, limits.loose].map((limit) =>
      scaleLimit(limit, counts[0]?.points[0]?.conditions.length ?? 0),
    ),
  );
  expect(lines.flatMap(({ label }) => label ?? [])).toEqual([names.firm, names.even, names.loose]);
});

test('causes count every wrong answer on sheets that was not accepted; few are not shared out', () => {
  const { wrong, skipped, shares } = causesOverTime(teo);
  const missed = teo.log.sats
    .filter(({ ruled, counts }) => counts && ruled.sat.purpose === 'sheet')
    .flatMap(({ marked }) => marked.places)
    .filter(({ outcome }) => outcome === 'wrong' || outcome === 'skipped');
  expect(wrong + skipped).toBe(missed.length);
  expect(shares?.every(({ hits, of }) => hits <= of && of === wrong)).toBe(true);
  expect(causesOverTime(wren).wrong < 8).toBe(causesOverTime(wren).shares === null);
});
