import { expect, test } from 'vitest';
import { scaleLimit } from '../../../src/core/marking/band';
import { median } from '../../../src/core/marking/median';
import { causesOverTime } from '../../../src/parent/over-time/cause-shares';
import { bandLines, countsAtEase } from '../../../src/parent/over-time/counts';
import { interruptedSheets } from '../../../src/parent/over-time/interrupted';
import { minutesADay } from '../../../src/parent/over-time/minutes';
import { cutStretches, isWithin } from '../../../src/parent/over-time/span';
import { thinkTimes } from '../../../src/parent/over-time/think-times';
import { type ChildReading, childReading } from '../../../src/parent/reading/child-reading';
import { dayNumber } from '../../../src/readings/day-number';
import { boatDesk, crew } from '../boat-desk';

const desk = boatDesk();
const always = () => true;

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

test('minutes are all of a day’s sittings together, and never longer than the clock ran', () => {
  const days = minutesADay(teo.log.sats);
  expect(new Set(days.map(({ day }) => day)).size).toBe(days.length);
  expect(days.reduce((sum, { sittings }) => sum + sittings, 0)).toBe(teo.log.sats.length);
  for (const { day, minutes } of days) {
    const own = teo.log.sats.filter(({ ruled }) => ruled.sat.day === day);
    const whole = own.reduce((sum, { ruled }) => sum + (ruled.sat.endedMs ?? 0), 0) / 60_000;
    expect(minutes).toBeGreaterThan(whole * 0.7);
    expect(minutes).toBeLessThanOrEqual(whole);
  }
});

test('time away from the screen is no minute of sitting: Juniper’s lock took over four of them', () => {
  const away = juniper.log.sats.find(({ ruled }) =>
    ruled.sat.away.some(({ fromMs, toMs }) => (toMs ?? 0) - (fromMs ?? 0) > 200_000),
  );
  const day = minutesADay(juniper.log.sats).find((one) => one.day === away?.ruled.sat.day);
  expect(away?.ruled.sat.endedMs).toBeGreaterThan(240_000);
  expect(day?.minutes).toBeLessThan(2.5);
});

test('a sheet left before its end has its count and its day, and stands in no line', () => {
  const found = interruptedSheets(juniper.log.sats, true);
  expect(found).toHaveLength(1);
  const away = juniper.log.sats.find(({ ruled: { sat } }) => sat.purpose === 'sheet' && sat.away.length > 0);
  expect(found[0]).toEqual({
    day: away?.ruled.sat.day,
    value: away?.marked.rightByBell,
    length: away?.marked.places.length,
  });
  const inLines = juniper.rates.flatMap(({ stretches }) => stretches.flatMap(({ points }) => points));
  expect(inLines.map(({ day }) => day)).not.toContain(found[0]?.day);
  // Wren's was ruled out by the parent.
  expect(interruptedSheets(wren.log.sats, false)).toEqual([]);
});

test('on the boat a stretch breaks where a set ends and nowhere else: look-backs in between cut nothing', () => {
  for (const { log, rates } of [wren, teo, juniper]) {
    const lines = [...rates.map(({ stretches }) => stretches), countsAtEase(log.sats), thinkTimes(log.sats)];
    for (const stretches of lines) {
      for (const [index, { changed }] of stretches.entries())
        expect(changed).toEqual(index === 0 ? [] : ['set']);
      const sets = stretches.map(({ points }) => points[0]?.conditions.set);
      expect(sets).not.toContain(null);
      expect(new Set(sets).size).toBe(stretches.length);
    }
  }
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
  const { wrong, skipped, shares } = causesOverTime(teo, always);
  const missed = teo.log.sats
    .filter(({ ruled, counts }) => counts && ruled.sat.purpose === 'sheet')
    .flatMap(({ marked }) => marked.places)
    .filter(({ outcome }) => outcome === 'wrong' || outcome === 'skipped');
  expect(wrong + skipped).toBe(missed.length);
  expect(shares?.every(({ hits, of }) => hits <= of && of === wrong)).toBe(true);
  expect(causesOverTime(wren, always).wrong < 8).toBe(causesOverTime(wren, always).shares === null);
});

test('within a span are the days less than so long before the newest', () => {
  const isShown = isWithin(84, '2026-11-25');
  expect([isShown('2026-11-25'), isShown('2026-09-03'), isShown('2026-09-02')]).toEqual([true, true, false]);
  expect(isWithin(null, '2026-11-25')('1999-01-01')).toBe(true);
});

test('a line cut off at the edge of a span is the same line', () => {
  const stretches = thinkTimes(wren.log.sats);
  const whole = stretches.find(({ line }) => line !== null);
  const second = whole?.points[1]?.day ?? '';
  const [cut] = cutStretches(whole ? [whole] : [], (day) => day >= second);
  expect(whole).toBeDefined();
  expect(cut?.points).toHaveLength((whole?.points.length ?? 0) - 1);
  const [line, shorter] = [whole?.line, cut?.line];
  const days = dayNumber(second) - dayNumber(whole?.points[0]?.day ?? '');
  expect(shorter?.first).toBeCloseTo((line?.first ?? 0) + ((line?.perWeek ?? 0) * days) / 7, 9);
  expect(shorter?.last).toBe(line?.last);
  expect(cutStretches(stretches, () => false)).toEqual([]);
});

test('causes are of the days shown alone', () => {
  const all = causesOverTime(teo, always).wrong;
  const late = causesOverTime(teo, (day) => day > '2026-11-10').wrong;
  expect(late).toBeGreaterThan(0);
  expect(late + causesOverTime(teo, (day) => day <= '2026-11-10').wrong).toBe(all);
});
