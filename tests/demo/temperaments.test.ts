import { describe, expect, test } from 'vitest';
import { parseFact } from '../../src/core/fact/fact';
import { median } from '../../src/core/marking/median';
import { juniper } from '../../src/demo/juniper';
import { teo } from '../../src/demo/teo';
import { wren } from '../../src/demo/wren';
import { accuracy, answered, boats, type MarkedSat, placesOf, type Read, readBoat, satsOf } from './a-boat';

const reads = boats.map(({ records }) => readBoat(records));
const logs = (times: readonly number[]) => median(times.map(Math.log)) ?? Number.NaN;
const timed = (sats: readonly MarkedSat[]) => sats.filter(({ sat }) => sat.clock !== null);
const untimed = (sats: readonly MarkedSat[]) => sats.filter(({ sat }) => sat.clock === null);

describe('Wren', () => {
  test('sits sheets of ten, to ten, without a clock', () => {
    for (const { records } of boats) {
      const sats = satsOf(records, wren);
      const sheets = sats.filter(({ purpose }) => purpose === 'sheet');
      expect(sheets.length).toBeGreaterThanOrEqual(30);
      expect(sheets.every(({ prompts }) => prompts.length === 10)).toBe(true);
      expect(sats.every(({ clock }) => clock === null)).toBe(true);
      const facts = sheets.flatMap(({ prompts }) => prompts.map(parseFact));
      expect(facts.every((fact) => fact?.op === 'add' && fact.answer <= 10)).toBe(true);
    }
  });

  test('needs longer where there is more to count', () => {
    for (const read of reads) {
      const places = placesOf(read.marked(wren, 'sheet')).filter(({ outcome }) => outcome === 'right');
      const timesOf = (isIn: (smaller: number) => boolean) =>
        places.flatMap(({ prompt, firstKeyMs }) => {
          const fact = parseFact(prompt);
          return fact && firstKeyMs !== null && isIn(Math.min(fact.a, fact.b)) ? [firstKeyMs] : [];
        });
      expect(logs(timesOf((smaller) => smaller >= 3))).toBeGreaterThan(
        logs(timesOf((smaller) => smaller <= 1)),
      );
    }
  });
});

describe('Teo', () => {
  test('is wrong sooner than he is right, with the clock', () => {
    for (const read of reads) {
      const sheets = timed(read.marked(teo, 'sheet'));
      expect(logs(answered(sheets, 'wrong')) - logs(answered(sheets, 'right'))).toBeLessThan(-0.2);
    }
  });

  test('is wrong more often with the clock than without it', () => {
    for (const read of reads) {
      const sheets = read.marked(teo, 'sheet');
      expect(accuracy(untimed(sheets)) - accuracy(timed(sheets))).toBeGreaterThan(0.08);
    }
  });

  test('is right, and not in a hurry, in the rows that his low counts bring', () => {
    const rows = reads.flatMap((read) => read.marked(teo, 'row'));
    expect(rows.length).toBeGreaterThan(5);
    expect(accuracy(rows)).toBeGreaterThan(0.85);
  });

  test('has fast hands: he reaches nearly every fact', () => {
    for (const read of reads) {
      const sheets = timed(read.marked(teo, 'sheet'));
      const reached = sheets.reduce((sum, { marked }) => sum + marked.reached, 0);
      expect(reached / (sheets.length * 25)).toBeGreaterThan(0.9);
    }
  });

  test('ends in more than one band over the weeks', () => {
    for (const read of reads) {
      const bands = new Set(timed(read.marked(teo, 'sheet')).map(({ marked }) => marked.band));
      expect(bands.size).toBeGreaterThanOrEqual(2);
    }
  });
});

describe('Juniper', () => {
  const common = (read: Read) => {
    const sheets = read.marked(juniper, 'sheet').filter(({ marked }) => !marked.interrupted);
    return { on: timed(sheets), off: untimed(sheets) };
  };

  test('is slower on days with the clock', () => {
    for (const read of reads) {
      const { on, off } = common(read);
      expect(logs(answered(on, 'right')) - logs(answered(off, 'right'))).toBeGreaterThan(0.15);
    }
  });

  test('is slower fact by fact, on those met on days of both kinds', () => {
    for (const read of reads) {
      const { on, off } = common(read);
      const shifts = [...timesByFact(on)].flatMap(([fact, times]) => {
        const without = timesByFact(off).get(fact);
        return without && times.length >= 2 && without.length >= 2 ? [logs(times) - logs(without)] : [];
      });
      expect(shifts.length).toBeGreaterThan(20);
      expect(shifts.filter((shift) => shift > 0).length / shifts.length).toBeGreaterThan(0.75);
    }
  });

  test('is less sure on days with the clock, and knows her facts without it', () => {
    for (const read of reads) {
      const { on, off } = common(read);
      expect(accuracy(off)).toBeGreaterThan(0.95);
      expect(accuracy(off) - accuracy(on)).toBeGreaterThan(0.06);
    }
  });

  test('was called away once in mid-sheet, which left that sheet without a band', () => {
    for (const read of reads) {
      const broken = read.marked(juniper, 'sheet').filter(({ marked }) => marked.interrupted);
      expect(broken.map(({ marked }) => marked.noBand)).toEqual(['interrupted']);
    }
  });
});

describe('practice', () => {
  test.each([
    ['Wren', wren],
    ['Teo', teo],
  ] as const)('makes the facts of a set quicker: %s', (_, member) => {
    const falls = reads.flatMap((read) => fallsOf(untimed(read.marked(member, 'sheet', 'row'))));
    expect(falls.length).toBeGreaterThan(50);
    expect(falls.filter((fall) => fall < 0).length / falls.length).toBeGreaterThan(0.6);
    expect(median(falls)).toBeLessThan(-0.05);
  });
});

function timesByFact(sats: readonly MarkedSat[]): ReadonlyMap<string, readonly number[]> {
  const times = new Map<string, number[]>();
  for (const { prompt, outcome, firstKeyMs } of placesOf(sats)) {
    if (outcome !== 'right' || firstKeyMs === null) continue;
    times.set(prompt, [...(times.get(prompt) ?? []), firstKeyMs]);
  }
  return times;
}

/** For each fact: how much the log of its time fell from the earlier half of its answers to the later. */
function fallsOf(sats: readonly MarkedSat[]): readonly number[] {
  return [...timesByFact(sats).values()].flatMap((times) => {
    const half = Math.floor(times.length / 2);
    return half >= 3 ? [logs(times.slice(-half)) - logs(times.slice(0, half))] : [];
  });
}
