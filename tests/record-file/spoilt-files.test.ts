import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { homeOf } from '../../src/core/household/bring-back';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, noHistory } from '../../src/core/household/history';
import { markSat } from '../../src/core/marking/mark-sat';
import { planDay } from '../../src/core/plan/plan-day';
import { isOfHistory, type LogRecord } from '../../src/core/record/record';
import { resumeSummary } from '../../src/core/summary/summarize';
import { emptySummary } from '../../src/core/summary/summary';
import { readHousehold } from '../../src/readings/document/read-household';
import { readRecordFile } from '../../src/record-file/read-record-file';
import type { RecordFile } from '../../src/record-file/record-file';
import { dayFacts } from '../../src/state/day-facts';
import { contentsOf } from '../../src/state/record-book/file-contents';
import { spoil } from './spoil';

// `SPOILT_FILES=100000 npm run unit -- tests/record-file/spoilt` makes more of them.
const runs = Number(process.env['SPOILT_FILES'] ?? 5000);
const lots = 10;

const whole = readFileSync(join(import.meta.dirname, 'samples/version-1.json'), 'utf8');
const sound = readRecordFile(whole);
const here = 'file' in sound ? sound.file.records : [];

describe('a file spoilt by any fault', () => {
  it.each(Array.from({ length: lots }, (_, lot) => [lot + 1]))(
    'is refused in plain words, or is a household that every page can read (lot %i)',
    (lot) => {
      const each = Math.ceil(runs / lots);
      const outcomes = { refused: 0, read: 0 };
      for (let seed = (lot - 1) * each; seed < lot * each; seed += 1) {
        const reading = readRecordFile(spoil(whole, seed));
        if ('trouble' in reading) {
          outcomes.refused += 1;
          expect(reading.trouble.reason, `seed ${seed}`).toMatch(/^[A-Z].{20,330}\.$/su);
        } else {
          outcomes.read += 1;
          useAll(reading.file);
        }
      }
      expect(outcomes.refused).toBeGreaterThan(each / 4);
      expect(outcomes.read).toBeGreaterThan(each / 20);
    },
    120_000 + runs * 20,
  );

  it('leaves what every object inherits as it was', () => {
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>)['sounds']).toBeUndefined();
  });
});

/** All that the app does with a file's records, alone and beside a household that is there. */
function useAll(file: RecordFile): void {
  fold(file.records);
  contentsOf(file, 'tablet', homeOf(here), new Set(here.map(({ id }) => id)));
  const household = foldHousehold([...homeOf(here), ...homeOf(file.records)]);
  expect(household.children.length).toBeLessThan(9);
}

function fold(records: readonly LogRecord[]): void {
  const household = foldHousehold(homeOf(records));
  const history = effectiveHistory(records.filter(isOfHistory), household);
  for (const child of household.children) {
    const { sittings, changes } = history.children.get(child.id) ?? noHistory;
    for (const { sat, rulings } of sittings) {
      const { flags, medianMs } = markSat(sat, rulings, child.settings.limits);
      expect([flags, medianMs]).toHaveLength(2);
    }
    const today = '2026-09-10';
    planDay({
      child: child.id,
      today,
      ...dayFacts(household, child.id),
      change: changes.get(today) ?? {},
      sittings,
      summary: resumeSummary(emptySummary, sittings),
    });
  }
  readHousehold(records);
}
