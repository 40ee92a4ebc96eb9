import * as v from 'valibot';
import type { LogRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { recordSchema } from './check-record';
import { id, moment } from './stamp-schema';

/** The newest file format this build reads and the one it writes. A later version of single records is no later file. */
export const recordFileVersion = 1;

/** Whose file it is: the device that made it, and when, ms since 1970. */
export interface FileHead {
  readonly format: 'sumstitch';
  readonly version: number;
  readonly device: Id;
  readonly madeAt: number;
}

/** A household's records in a file: what a backup is, and what the readings take. */
export interface RecordFile extends FileHead {
  readonly records: readonly LogRecord[];
}

const headEntries = {
  format: v.literal('sumstitch'),
  version: v.literal(recordFileVersion),
  device: id,
  madeAt: moment,
};

/** All of a file but its records, checked. */
export const fileHeadSchema = v.looseObject(headEntries);

/** The whole file, checked. */
export const recordFileSchema = v.looseObject({ ...headEntries, records: v.array(recordSchema) });

/** The records as the text of a file, one record a line. */
export function writeRecordFile(device: Id, madeAt: number, records: readonly LogRecord[]): string {
  const writer = openRecordWriter(device, madeAt);
  return writer.opening + writer.lines(records) + writer.closing;
}

/** Writes a file in parts, as the records are read: a whole household need never be one text. */
export interface RecordWriter {
  readonly opening: string;
  /** The next records, given in any number of lots. */
  lines(records: readonly LogRecord[]): string;
  readonly closing: string;
}

export function openRecordWriter(device: Id, madeAt: number): RecordWriter {
  const head: FileHead = { format: 'sumstitch', version: recordFileVersion, device, madeAt };
  let isFirst = true;
  return {
    opening: `${JSON.stringify(head).slice(0, -1)},"records":[\n`,
    lines(records) {
      if (records.length === 0) return '';
      const lines = records.map((record) => JSON.stringify(record)).join(',\n');
      const text = isFirst ? lines : `,\n${lines}`;
      isFirst = false;
      return text;
    },
    closing: '\n]}\n',
  };
}
