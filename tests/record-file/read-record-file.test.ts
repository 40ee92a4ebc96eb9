import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecordFile } from '../../src/record-file/read-record-file';
import { writeRecordFile } from '../../src/record-file/record-file';
import { openRecordReader } from '../../src/record-file/record-reader';
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

describe('line by line or in one piece', () => {
  it('a file is read the same', () => {
    fc.assert(
      fc.property(anyLog, fc.constantFrom(undefined, 1), ({ home, history }, indent) => {
        const text = write([...home, ...history]);
        expect(readRecordFile(JSON.stringify(JSON.parse(text), null, indent))).toEqual(readRecordFile(text));
      }),
    );
  });

  it('a file comes in pieces of any length', () => {
    fc.assert(
      fc.property(anyLog, fc.array(fc.nat(400), { minLength: 1 }), ({ home, history }, lengths) => {
        const text = write([...home, ...history]);
        const reader = openRecordReader();
        let from = 0;
        for (let nth = 0; from < text.length; nth += 1) {
          const to = from + 1 + (lengths[nth % lengths.length] ?? 0);
          expect(reader.take(text.slice(from, to))).toBeNull();
          from = to;
        }
        expect(reader.end()).toEqual(readRecordFile(text));
      }),
    );
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

  it('that is no text of ours at all', () => {
    for (const text of ['once upon a time', '\u0000\u0001\u0002', 'PK\u0003\u0004'.repeat(99)]) {
      expect(reason(text)?.what).toBe('notOurs');
    }
  });

  it('a later version’s, and one with a kind of record that only a later version can have made', () => {
    expect(reason(whole.replace('"version":1', '"version":2'))).toMatchObject({ what: 'later' });
    const stood = reason(whole.replace('"kind":"sat"', '"kind":"stood"'));
    expect(stood).toMatchObject({ what: 'later' });
    expect(stood?.reason).toContain('Record 1');
  });

  it('that has a line with no end, or far too much in one piece', () => {
    const [head] = whole.split('\n');
    expect(reason(`${head}\n${'x'.repeat(5_000_000)}`)?.what).toBe('damaged');
    expect(reason(`${' '.repeat(41_000_000)}{}`)?.what).toBe('tooLarge');
  });

  it('in which a record stands twice', () => {
    const sat = satOf('ann', '2026-03-02', 1, [['mul-2-3', '6']]);
    expect(reason(write([sat, { ...sat, seq: 2 }]))).toEqual({
      what: 'damaged',
      reason: 'The file is damaged: record 2 stands in it twice.',
    });
  });

  it('that is nested too deep, or reaches for a prototype', () => {
    const sat = satOf('ann', '2026-03-02', 1, [['mul-2-3', '6']]);
    const nested = (depth: number) => `${'['.repeat(depth)}${']'.repeat(depth)}`;
    for (const extra of [nested(30), nested(100_000), '{"__proto__":{"a":1}}', '{"constructor":1}']) {
      const text = write([sat]).replace('"kind":"sat"', `"kind":"sat","extra":${extra}`);
      expect(reason(text)?.what).toBe('damaged');
    }
  });

  it.each([
    ['a visit’s end', '"end":"taken"', '"end":"fallen"'],
    ['a time', '"onsetMs":0', '"onsetMs":"soon"'],
    ['a day', '"day":"2026-03-02"', '"day":"March"'],
    ['a prompt', '"prompts":["mul-2-3"]', '"prompts":["2 × 3"]'],
    ['a stamp', '"seq":1', '"seq":-1'],
  ])('%s that can’t be, with the record’s number', (_, from, to) => {
    const broken = whole.replace(from, to);
    expect(broken).not.toBe(whole);
    expect(reason(broken)).toMatchObject({ what: 'damaged' });
    expect(reason(broken)?.reason).toContain('in record 1');
  });
});
