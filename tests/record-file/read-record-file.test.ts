import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecordFile } from '../../src/record-file/read-record-file';
import { writeRecordFile } from '../../src/record-file/record-file';
import { anyLog, satOf, stamped } from '../core/household/made-records';

const write = (records: readonly unknown[]) => writeRecordFile('tablet', 7, records as never);
const reason = (text: string) => {
  const reading = readRecordFile(text);
  return 'trouble' in reading ? reading.trouble : null;
};

describe('a file of records', () => {
  it('comes back as it was written, whatever records it holds', () => {
    fc.assert(
      fc.property(anyLog, ({ home, history }) => {
        const records = [...home, ...history];
        const reading = readRecordFile(write(records));
        expect('file' in reading && reading.file).toEqual({
          format: 'sumstitch',
          version: 1,
          device: 'tablet',
          madeAt: 7,
          records: JSON.parse(JSON.stringify(records)),
        });
      }),
    );
  });

  it('without a record is a file as well, and fields unknown today are kept', () => {
    expect(reason(write([]))).toBeNull();
    const sat = { ...satOf('ann', '2026-03-02', 1, [['mul-2-3', '6']]), mood: 'sunny' };
    const reading = readRecordFile(write([sat]));
    expect('file' in reading && reading.file.records[0]).toHaveProperty('mood', 'sunny');
  });

  it('keeps records of a later version, of kinds unknown today too', () => {
    const later = { ...stamped(3, { v: 2 }), kind: 'moonPhase', phase: 'full' };
    const reading = readRecordFile(write([later]));
    expect('file' in reading && reading.file.records).toEqual([later]);
  });
});

describe('a file that can’t be read says why in plain words', () => {
  const whole = write([satOf('ann', '2026-03-02', 1, [['mul-2-3', '6']])]);

  it('cut off anywhere', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: whole.length - 3 }), (length) => {
        expect(reason(whole.slice(0, length))?.what).toBe('damaged');
      }),
    );
  });

  it('another program’s', () => {
    for (const text of ['{}', '[]', 'null', '3', '"sumstitch"', '{"format":"else","version":1}']) {
      expect(reason(text)).toEqual({ what: 'notOurs', reason: 'This is not a file of Sumstitch records.' });
    }
  });

  it('a later version’s', () => {
    expect(reason(whole.replace('"version":1', '"version":2'))).toMatchObject({ what: 'later' });
  });

  it.each([
    ['a visit’s end', '"end":"taken"', '"end":"fallen"'],
    ['a time', '"onsetMs":0', '"onsetMs":"soon"'],
    ['a day', '"day":"2026-03-02"', '"day":"March"'],
    ['a prompt', '"prompts":["mul-2-3"]', '"prompts":["2 × 3"]'],
    ['a kind', '"kind":"sat"', '"kind":"stood"'],
    ['a stamp', '"seq":1', '"seq":-1'],
  ])('%s that can’t be, with the record’s number', (_, from, to) => {
    const broken = whole.replace(from, to);
    expect(broken).not.toBe(whole);
    expect(reason(broken)).toMatchObject({ what: 'damaged' });
    expect(reason(broken)?.reason).toContain('in record 1');
  });
});
