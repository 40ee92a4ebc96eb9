import { toJsonSchema } from '@valibot/to-json-schema';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import schema from '../../public/record-file.schema.json' with { type: 'json' };
import { makeBoat } from '../../src/demo/make-boat';
import { readRecordFile } from '../../src/record-file/read-record-file';
import { recordFileSchema, writeRecordFile } from '../../src/record-file/record-file';
import { anyLog } from '../core/household/made-records';

const made = toJsonSchema(recordFileSchema, { target: 'draft-2020-12' });
const validate = new Ajv2020({ strict: false, allErrors: false }).compile(schema);

const boat = JSON.parse(writeRecordFile('tablet', 0, makeBoat('2026-11-25', 3).records));

describe('the JSON Schema beside the app', () => {
  it('is the one the file is checked by', async () => {
    const text = `${JSON.stringify({ title: 'A file of Sumstitch records', ...made }, null, 2)}\n`;
    await expect(text).toMatchFileSnapshot('../../public/record-file.schema.json');
  });

  it('passes the demo household, by another hand', () => {
    expect(validate(boat), JSON.stringify(validate.errors)).toBe(true);
  });

  it('says of any file what the app’s own check says', () => {
    const broken = fc.constantFrom<(file: Record<string, unknown>) => unknown>(
      (file) => file,
      (file) => ({ ...file, format: 'other' }),
      (file) => ({ ...file, version: 'one' }),
      ({ records: _, ...file }) => file,
      (file) => ({ ...file, device: 'a/b' }),
      (file) => ({ ...file, records: [...(file['records'] as unknown[]), { kind: 'sat' }] }),
      (file) => ({ ...file, records: [...(file['records'] as unknown[]), null] }),
      (file) => ({ ...file, extra: 'kept' }),
    );
    fc.assert(
      fc.property(anyLog, broken, ({ home, history }, breakIt) => {
        const file = breakIt(JSON.parse(writeRecordFile('tablet', 0, [...home, ...history])));
        expect(validate(file)).toBe('file' in readRecordFile(JSON.stringify(file)));
      }),
      { numRuns: 150 },
    );
  });
});
