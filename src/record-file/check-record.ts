import * as v from 'valibot';
import type { LogRecord } from '../core/record/record';
import { recordVersion } from '../core/record/stamp';
import { otherSchemas } from './household-schema';
import { satSchema } from './sat-schema';
import { laterRecord } from './stamp-schema';

/** A record of this version, of a kind it knows; or one that a later version made. */
export const recordSchema = v.union([v.variant('kind', [satSchema, ...otherSchemas]), laterRecord]);

/** The kinds of record that this version knows. */
export const knownKinds: ReadonlySet<string> = new Set(
  [satSchema, ...otherSchemas].map(({ entries }) => entries.kind.literal),
);

/** Values within values in a record; the deepest kind needs six. */
const deepest = 24;
/** The longest text in a record, in characters, and the most values in one list of it. */
const longest = 20_000;

/** A value from outside as a record; or what is wrong with it. */
export type RecordCheck =
  | { readonly record: LogRecord }
  /** `field` is where the first fault is, in the record's own names; empty where it is none of them. */
  | { readonly fault: 'damaged' | 'unknownKind'; readonly field: string };

/** Checks a value from outside as a record, body and all. */
export function checkRecord(value: unknown): RecordCheck {
  if (!isTame(value, deepest)) return { fault: 'damaged', field: '' };
  if (isUnknownKind(value)) return { fault: 'unknownKind', field: 'kind' };
  const checked = v.safeParse(recordSchema, value, { abortEarly: true });
  // The schema lets unknown fields through, and the names of facts and prompts are checked by their shape.
  if (checked.success) return { record: value as LogRecord };
  return { fault: 'damaged', field: fieldOf(checked.issues[0]) };
}

/** The fields that lead to the first fault, in the record's own names. */
function fieldOf(issue: v.BaseIssue<unknown>): string {
  const [inner] = issue.issues ?? [];
  return [...pathOf(issue), ...(inner ? pathOf(inner) : [])].join('.');
}

function pathOf({ path }: v.BaseIssue<unknown>): readonly string[] {
  return (path ?? []).map(({ key }) => String(key));
}

function isUnknownKind(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || !('kind' in value) || !('v' in value)) return false;
  return value.v === recordVersion && typeof value.kind === 'string' && !knownKinds.has(value.kind);
}

/**
 * Whether a value can be copied and stored without harm: nothing too deep or too long, and none of the keys that
 * reach an object's prototype. A schema that lets unknown fields through never looks into them.
 */
function isTame(value: unknown, depth: number): boolean {
  if (typeof value === 'string') return value.length <= longest;
  if (typeof value !== 'object' || value === null) return true;
  if (depth === 0) return false;
  if (Array.isArray(value)) return value.length <= longest && value.every((one) => isTame(one, depth - 1));
  return Object.entries(value).every(
    ([key, one]) => !wild.has(key) && key.length <= longest && isTame(one, depth - 1),
  );
}

const wild: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);
