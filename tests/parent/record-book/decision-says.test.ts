import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { homeOf } from '../../../src/core/household/bring-back';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { effectiveHistory } from '../../../src/core/household/history';
import { isOfHistory, type LogRecord } from '../../../src/core/record/record';
import { decisionSaid } from '../../../src/parent/record-book/decision-says';
import { namesFor } from '../../../src/parent/record-book/names-for';
import { readRecordFile } from '../../../src/record-file/read-record-file';
import type { Decision } from '../../../src/state/record-book/record-book';
import { anyLog } from '../../core/household/made-records';

const sample = join(import.meta.dirname, '../../record-file/samples/version-1.json');
const reading = readRecordFile(readFileSync(sample, 'utf8'));
const records = 'file' in reading ? reading.file.records : [];

function sayAll(all: readonly LogRecord[]): ReadonlyMap<string, string> {
  const household = foldHousehold(homeOf(all));
  const history = effectiveHistory(all.filter(isOfHistory), household);
  const decisions = all.filter((record): record is Decision => record.kind !== 'sat');
  const names = namesFor(household, history, decisions);
  return new Map(decisions.map((record) => [record.id, decisionSaid(record, names)]));
}

describe('a decision in plain words', () => {
  const said = sayAll(records);

  it.each([
    ['added-wren', 'Wren was added.'],
    ['changed-teo', 'Teo: archived.'],
    ['own-set', 'The own set “Lock and towpath”: four facts.'],
    ['ticked', 'Wren: known already: 1 + 1 and 2 + 1.'],
    ['settings-house', 'For everyone: sounds on; keys make no sound.'],
    ['line', 'Your line for 6 + 2: “Two more locks after six: eight.”.'],
    ['line-back', 'The line for 7 + 2 is the usual one again.'],
    ['handed', 'Wren, Tue 8 Sep 2026: with the clock; 5 facts; some of it on another day.'],
    ['trial-drawn', /^Wren: a clock trial of \w+ days was drawn\.$/],
    ['trial-stopped', 'Wren: the clock trial was stopped.'],
    ['spoken', 'Wren: three facts asked aloud on Wed 9 Sep 2026.'],
    ['year', 'The school year 2026–27 begins on Mon 7 Sep 2026.'],
    ['remark', 'Wren: remarks on Mon 7 Sep 2026 to Fri 18 Dec 2026 written.'],
    ['ruled-0', /^Wren, Wed 9 Sep 2026: No. 2, 4 \+ 2/],
    ['undone-1', /^Taken back: Wren, Wed 9 Sep 2026: /],
    ['deleted-guest', 'A child was deleted for good.'],
  ])('%s', (id, says) => {
    if (typeof says === 'string') expect(said.get(id)).toBe(says);
    else expect(said.get(id)).toMatch(says);
  });

  it('ends in one full stop, whatever was decided, and ends', () => {
    fc.assert(
      fc.property(anyLog, ({ home, history }) => {
        for (const says of sayAll([...home, ...history]).values()) {
          expect(says).toMatch(/[.”]$/);
          expect(says).not.toMatch(/undefined|\[object|NaN|\.\.$/);
        }
      }),
    );
  });
});
