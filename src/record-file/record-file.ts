import * as v from 'valibot';
import type { LogRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { otherSchemas } from './household-schema';
import { satSchema } from './sat-schema';
import { id, laterRecord } from './stamp-schema';

/** The newest file format this build reads and the one it writes. A later version of single records is no later file. */
export const recordFileVersion = 1;

/** A household's records in a file: what a backup is, and what the readings take. `madeAt`: ms since 1970. */
export interface RecordFile {
  readonly format: 'sumstitch';
  readonly version: number;
  readonly device: Id;
  readonly madeAt: number;
  readonly records: readonly LogRecord[];
}

/** A record of this version, of a kind it knows; or one that a later version made. */
const recordSchema = v.union([v.variant('kind', [satSchema, ...otherSchemas]), laterRecord]);

/** The whole file, checked. */
export const recordFileSchema = v.looseObject({
  format: v.literal('sumstitch'),
  version: v.literal(recordFileVersion),
  device: id,
  madeAt: v.number(),
  records: v.array(recordSchema),
});

/** The records as the text of a file, one record a line. */
export function writeRecordFile(device: Id, madeAt: number, records: readonly LogRecord[]): string {
  const head = JSON.stringify({ format: 'sumstitch', version: recordFileVersion, device, madeAt });
  const lines = records.map((record) => JSON.stringify(record)).join(',\n');
  return `${head.slice(0, -1)},"records":[\n${lines}\n]}\n`;
}
