import { readHousehold } from '../readings/document/read-household';
import { readRecordFile } from '../record-file/read-record-file';

/** What `npm run read` prints for the text of a file: every reading, or why there is none. */
export type Answer = { readonly document: string } | { readonly reason: string };

/** Reads the text of a file of records. */
export function read(text: string): Answer {
  const reading = readRecordFile(text);
  if ('trouble' in reading) return { reason: reading.trouble.reason };
  return { document: JSON.stringify(readHousehold(reading.file.records), null, 1) };
}
