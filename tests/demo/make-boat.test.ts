import { isWeekend, parseISO } from 'date-fns';
import { describe, expect, test } from 'vitest';
import { parsePrompt } from '../../src/core/fact/prompt';
import type { Sat } from '../../src/core/record/sat';
import { compareStamps, recordVersion } from '../../src/core/record/stamp';
import { replaySat, sealSitting } from '../../src/core/sitting/machine';
import { juniper } from '../../src/demo/juniper';
import { makeBoat } from '../../src/demo/make-boat';
import { schoolDays } from '../../src/demo/school-days';
import { teo } from '../../src/demo/teo';
import { wren } from '../../src/demo/wren';
import { checkRecord } from '../../src/record-file/check-record';
import { boat, boats, isHistory, readBoat, satsOf, today } from './a-boat';

const { records } = boat;

describe('the boat', () => {
  test('is the same for the same day and seed, and another for another', () => {
    expect(makeBoat(today, 1)).toEqual(boat);
    expect(boats[1]).not.toEqual(boat);
    expect(makeBoat('2026-11-26', 1)).not.toEqual(boat);
  });

  test('has records that the log takes, counted from 1 without a gap, on one device', () => {
    for (const { records: all, device } of boats) {
      expect(all.filter((record) => 'fault' in checkRecord(record))).toEqual([]);
      expect(all.map(({ seq }) => seq)).toEqual(all.map((_, index) => index + 1));
      expect(all.toSorted(compareStamps)).toEqual(all);
      expect(new Set(all.map((record) => record.device))).toEqual(new Set([device]));
      expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
      expect(all.every(({ v }) => v === recordVersion)).toBe(true);
    }
  });

  test('is written down in the order in which it happened, up to this morning', () => {
    for (const { records: all } of boats) {
      const times = all.map(({ at }) => at);
      expect(times.toSorted((x, y) => x - y)).toEqual(times);
      expect(times.at(-1)).toBeLessThan(Date.parse(`${today}T12:00:00Z`));
    }
  });

  test('survives being saved as text', () => {
    expect(JSON.parse(JSON.stringify(records))).toEqual(records);
  });

  test('folds to three children, each with a current set and none left over', () => {
    const { household, history } = readBoat(records);
    expect(household.children.map(({ name }) => name)).toEqual(['Wren', 'Teo', 'Juniper']);
    expect(household.children.every(({ currentSet }) => currentSet !== null)).toBe(true);
    expect(household.children.every(({ keptSets }) => keptSets.length >= 2)).toBe(true);
    expect(household.later + history.later).toBe(0);
  });
});

describe('its sittings', () => {
  test('replay exactly', () => {
    for (const sat of boats.flatMap((one) => satsOf(one.records))) {
      const { kind: _kind, id: _id, v: _v, seq: _seq, device: _device, at: _at, ...rest } = sat;
      expect(sealSitting(replaySat(sat), startOf(sat))).toEqual({ kind: 'sat', ...rest });
    }
  });

  test('carry every kind of thing that a real one can', () => {
    const sats = boats.flatMap((one) => satsOf(one.records));
    const visits = sats.flatMap((sat) => sat.visits);
    const has = (values: readonly unknown[], ...wanted: readonly unknown[]) =>
      expect(wanted.filter((value) => !values.includes(value))).toEqual([]);
    has(
      sats.map(({ purpose }) => purpose),
      'practice',
      'sheet',
      'row',
      'mending',
    );
    has(
      sats.map(({ ended }) => ended),
      'finished',
      'bell',
      'stopped',
    );
    has(
      visits.map(({ end }) => end),
      'taken',
      'skipped',
      'back',
      'left',
    );
    has(
      visits.map(({ took }) => took),
      'itself',
      'done',
    );
    has(
      visits.flatMap(({ keys }) => keys.map(([key]) => key)),
      ...['back', 'done', 'skip', '0', '5', '9'],
    );
    expect(visits.some(({ shown }) => shown)).toBe(true);
    expect(visits.some(({ from }) => from !== undefined)).toBe(true);
    expect(visits.some(({ late }) => late === 1)).toBe(true);
    expect(visits.some(({ afterBell }) => afterBell)).toBe(true);
    expect(sats.some(({ away }) => away.length === 1)).toBe(true);
  });

  test('fall on school days only, and on none that the child missed', () => {
    for (const { records: all } of boats) {
      const days = schoolDays(today);
      const missed = (member: typeof wren) => member.misses.map((nth) => days[nth]);
      for (const sat of satsOf(all)) expect(days).toContain(sat.day);
      for (const member of [wren, teo, juniper]) {
        const sat = new Set(satsOf(all, member).map(({ day }) => day));
        expect(missed(member).filter((day) => day !== undefined && sat.has(day))).toEqual([]);
        expect(sat.size).toBe(days.length - member.misses.length - (member === juniper ? 1 : 0));
      }
    }
  });

  test('are never on a weekend, whatever day of the week today is, but for today itself', () => {
    for (const day of ['2026-11-22', '2026-11-23', '2027-01-02']) {
      const weekend = satsOf(makeBoat(day, 3).records).filter(
        (sat) => sat.day !== day && isWeekend(parseISO(sat.day)),
      );
      expect(weekend).toEqual([]);
    }
  });

  test('begin by the clocks of where the boat lies', () => {
    const inZone = makeBoat(today, 1, () => ({ zone: 'Asia/Kolkata', offsetMin: 330 }));
    const first = (all: typeof boat) => satsOf(all.records)[0];
    expect(first(inZone)).toMatchObject({ zone: 'Asia/Kolkata', offsetMin: 330, day: first(boat)?.day });
    expect(first(inZone)?.startedAt).toBe((first(boat)?.startedAt ?? 0) - 330 * 60_000);
  });

  test('ask for nothing but prompts that are known', () => {
    const prompts = satsOf(records).flatMap((sat) => sat.prompts);
    expect(prompts.filter((prompt) => !parsePrompt(prompt))).toEqual([]);
  });
});

describe('the parent of the boat', () => {
  test('has accepted, called slips and no slip, voided, and thought better of one ruling', () => {
    for (const { records: all } of boats) {
      const { rulings } = readBoat(all).household;
      const what = rulings.map(({ record, active }) => [record.ruling.what, active]);
      expect(what).toHaveLength(6);
      expect(what).toContainEqual(['accept', true]);
      expect(what).toContainEqual(['void', true]);
      expect(what).toContainEqual(['notOwnWork', false]);
      expect(what.filter(([one]) => one === 'slip')).toHaveLength(3);
    }
  });

  test('takes the clock away from Juniper on every other of her days with one', () => {
    for (const { records: all } of boats) {
      const away = all.filter(
        (record) => isHistory(record) && record.kind === 'dayChanged' && record.change.timed !== undefined,
      );
      expect(away.every((record) => 'child' in record && record.child === juniper.id)).toBe(true);
      const timed = satsOf(all, juniper).filter(({ clock }) => clock !== null);
      expect(Math.abs(away.length - timed.length)).toBeLessThanOrEqual(2);
      expect(timed.length).toBeGreaterThanOrEqual(8);
    }
  });
});

test('a boat is small', () => {
  for (const { records: all } of boats) {
    expect(all.length).toBeLessThan(420);
    expect(JSON.stringify(all).length).toBeLessThan(1_700_000);
  }
});

function startOf({ day, offsetMin, zone, startedAt, clockStepMs, isolated }: Sat) {
  return { day, offsetMin, zone, startedAt, clockStepMs, isolated };
}
