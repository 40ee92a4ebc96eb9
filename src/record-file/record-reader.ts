import * as v from 'valibot';
import type { LogRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { checkRecord } from './check-record';
import {
  damaged,
  type FileTrouble,
  laterFile,
  notOurs,
  notWhole,
  tooLarge,
  unknownKind,
} from './file-trouble';
import { type FileHead, fileHeadSchema, type RecordFile, recordFileVersion } from './record-file';

/** What a file holds, or why it can't be read. */
export type FileReading = { readonly file: RecordFile } | { readonly trouble: FileTrouble };

/** Reads a file as its text comes in, and stops at the first fault. */
export interface RecordReader {
  /** The next of the text; the trouble as soon as there is one. */
  take(text: string): FileTrouble | null;
  end(): FileReading;
}

/** The longest line that can be one record, and the most text of a file that is not one record a line. */
const mostOfOneLine = 4_000_000;
const mostOfOnePiece = 40_000_000;

/**
 * The files this app writes have one record a line, and are read line by line. Another hand's JSON (indented, or all
 * in one line) is collected and read in one piece.
 */
export function openRecordReader(): RecordReader {
  const records = createRecordList();
  let rest = '';
  let head: FileHead | null = null;
  let isInOnePiece = false;
  let isClosed = false;
  let hasComma = true;
  let trouble: FileTrouble | null = null;

  function takeLine(line: string): FileTrouble | null {
    const text = line.trim();
    if (text === '') return null;
    if (isClosed) return notWhole;
    if (text === ']}') {
      isClosed = true;
      return hasComma && records.all.length > 0 ? notWhole : null;
    }
    if (!hasComma) return notWhole;
    hasComma = text.endsWith(',');
    const parsed = parseJson(hasComma ? text.slice(0, -1) : text);
    return parsed ? records.add(parsed.value) : notWhole;
  }

  function takeHead(line: string): FileTrouble | null {
    const parsed = line.trimEnd().endsWith('"records":[') ? parseJson(`${line}]}`) : null;
    if (!parsed) {
      isInOnePiece = true;
      return null;
    }
    const read = readHead(parsed.value);
    if ('trouble' in read) return read.trouble;
    head = read.head;
    return null;
  }

  function takeLines(): FileTrouble | null {
    let from = 0;
    for (let end = rest.indexOf('\n'); end >= 0; end = rest.indexOf('\n', from)) {
      const line = rest.slice(from, end);
      const fault = head ? takeLine(line) : takeHead(line);
      if (fault) return fault;
      if (isInOnePiece) return null;
      from = end + 1;
    }
    rest = rest.slice(from);
    if (rest.length <= mostOfOneLine) return null;
    if (head) return damaged('The file is damaged: one of its records has no end.');
    isInOnePiece = true;
    return null;
  }

  function readOnePiece(): FileReading {
    const parsed = parseJson(rest);
    if (!parsed) return { trouble: /^\s*[^{\s]/.test(rest) ? notOurs : notWhole };
    const read = readHead(parsed.value);
    if ('trouble' in read) return read;
    const { records: listed } = parsed.value as { readonly records?: unknown };
    if (!Array.isArray(listed)) return { trouble: damaged('The file is damaged at “records”.') };
    for (const value of listed) {
      const fault = records.add(value);
      if (fault) return { trouble: fault };
    }
    return { file: { ...read.head, records: records.all } };
  }

  return {
    take(text) {
      if (trouble) return trouble;
      rest += text;
      if (!isInOnePiece) trouble = takeLines();
      if (isInOnePiece && rest.length > mostOfOnePiece) trouble = tooLarge;
      return trouble;
    },
    end() {
      trouble ??= head ? takeLine(rest) : null;
      if (trouble) return { trouble };
      if (!head) return readOnePiece();
      return isClosed ? { file: { ...head, records: records.all } } : { trouble: notWhole };
    },
  };
}

/** The records of one file, each checked as it comes, and no two under one id. */
function createRecordList() {
  const all: LogRecord[] = [];
  const ids = new Set<Id>();
  return {
    all,
    add(value: unknown): FileTrouble | null {
      const number = all.length + 1;
      const check = checkRecord(value);
      if ('fault' in check) {
        if (check.fault === 'unknownKind') return unknownKind(number);
        return damaged(`The file is damaged in record ${number}${check.field && ` (“${check.field}”)`}.`);
      }
      if (ids.has(check.record.id))
        return damaged(`The file is damaged: record ${number} stands in it twice.`);
      ids.add(check.record.id);
      all.push(check.record);
      return null;
    },
  };
}

function readHead(value: unknown): { readonly head: FileHead } | { readonly trouble: FileTrouble } {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'sumstitch')
    return { trouble: notOurs };
  const { version } = value as { readonly version?: unknown };
  if (typeof version === 'number' && version > recordFileVersion) return { trouble: laterFile };
  const checked = v.safeParse(fileHeadSchema, value, { abortEarly: true });
  if (checked.success) {
    const { format, version: own, device, madeAt } = checked.output;
    return { head: { format, version: own, device, madeAt } };
  }
  const [field] = checked.issues[0].path ?? [];
  return { trouble: damaged(`The file is damaged${field ? ` at “${String(field.key)}”` : ''}.`) };
}

function parseJson(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}
