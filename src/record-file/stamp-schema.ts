import * as v from 'valibot';
import { recordVersion } from '../core/record/stamp';

export const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9-]{1,64}$/));
export const day = v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\d$/));
export const count = v.pipe(v.number(), v.integer(), v.minValue(0));
export const ms = v.nullable(v.number());
export const factId = v.pipe(v.string(), v.regex(/^(add|sub|mul|div)-\d{1,3}-\d{1,3}$/));
export const promptId = v.pipe(
  v.string(),
  v.regex(
    /^((story-[a-z]+-)?(add|sub|mul|div)-\d{1,3}-\d{1,3}|copy-(0|[1-9]\d{0,2})|line-(up|down)-\d{1,2}-\d{1,3}-[a-d]-[012])$/,
  ),
);

/** What every record of this version carries. */
export const stamp = {
  id,
  v: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(recordVersion)),
  seq: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(Number.MAX_SAFE_INTEGER - 1)),
  device: id,
  at: v.number(),
};

/** A record that a later version made: kept for the build that knows it, with no more asked than its stamp. */
export const laterRecord = v.looseObject({
  ...stamp,
  v: v.pipe(v.number(), v.integer(), v.minValue(recordVersion + 1)),
  kind: v.string(),
});

/** One of the words of a union: each is a key here, so that none can be forgotten. */
export function oneOf<T extends string>(words: Readonly<Record<T, true>>) {
  return v.picklist(Object.keys(words) as [T, ...T[]]);
}

/** A schema for each field of a type: none can be forgotten, whether a record must have it or may. */
export type FieldsOf<T> = { readonly [K in keyof T]-?: v.GenericSchema };
