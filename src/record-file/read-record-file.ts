import { type FileReading, openRecordReader } from './record-reader';

/** Reads the text of a file and checks every record in it. */
export function readRecordFile(text: string): FileReading {
  const reader = openRecordReader();
  reader.take(text);
  return reader.end();
}
