import * as v from 'valibot';
import { type RecordFile, recordFileSchema, recordFileVersion } from './record-file';

/** Why a file could not be read, in words for a parent. */
export interface FileTrouble {
  readonly what: 'notOurs' | 'later' | 'damaged';
  readonly reason: string;
}

/** What a file holds, or why it can't be read. */
export type FileReading = { readonly file: RecordFile } | { readonly trouble: FileTrouble };

/** Reads the text of a file and checks every record in it. */
export function readRecordFile(text: string): FileReading {
  const parsed = parseJson(text);
  if (!parsed) return trouble('damaged', 'The file is not whole: it cannot be read as JSON.');
  const { value } = parsed;
  if (!isOurs(value)) return trouble('notOurs', 'This is not a file of Sumstitch records.');
  if (typeof value.version === 'number' && value.version > recordFileVersion) {
    return trouble('later', 'A later version of Sumstitch made this file. Load the page again to get it.');
  }
  const checked = v.safeParse(recordFileSchema, value, { abortEarly: true });
  // The check lets unknown fields through, and the names of facts and prompts are checked by their shape.
  if (checked.success) return { file: checked.output as unknown as RecordFile };
  return trouble('damaged', `The file is damaged ${placeOf(checked.issues[0])}.`);
}

function parseJson(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

function isOurs(value: unknown): value is { readonly version?: unknown } {
  return typeof value === 'object' && value !== null && 'format' in value && value.format === 'sumstitch';
}

function trouble(what: FileTrouble['what'], reason: string): FileReading {
  return { trouble: { what, reason } };
}

/** Where the first fault is: the record by its number, and the field where one can be named. */
function placeOf(issue: v.BaseIssue<unknown>): string {
  const [first, second, ...rest] = pathOf(issue);
  if (first !== 'records' || second === undefined) return first === undefined ? '' : `at “${first}”`;
  const [inner] = issue.issues ?? [];
  const field = [...rest, ...(inner ? pathOf(inner) : [])].join('.');
  return `in record ${Number(second) + 1}${field === '' ? '' : ` (“${field}”)`}`;
}

function pathOf({ path }: v.BaseIssue<unknown>): readonly string[] {
  return (path ?? []).map(({ key }) => String(key));
}
