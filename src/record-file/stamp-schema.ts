import * as v from 'valibot';
import { highestSeq, recordVersion } from '../core/record/stamp';

const calendarDay =
  /^(\d{4}-((0[13578]|1[02])-(0[1-9]|[12]\d|3[01])|(0[469]|11)-(0[1-9]|[12]\d|30)|02-(0[1-9]|1\d|2[0-8]))|(\d\d(0[48]|[2468][048]|[13579][26])|([02468][048]|[13579][26])00)-02-29)$/;
/** The last moment of the year 9999, ms since 1970. */
const lastMoment = 253_402_300_799_999;

export const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9-]{1,64}$/));
/** A day that the calendar has: another would end in no date at all. */
export const day = v.pipe(v.string(), v.regex(calendarDay));
export const count = upTo(Number.MAX_SAFE_INTEGER - 1);
/** A place on a sheet, or how many of something there are on one. */
export const small = upTo(9999);
export const ms = v.nullable(within(-1e12, 1e12));
export const moment = within(0, lastMoment);
export const factId = v.pipe(v.string(), v.regex(/^(add|sub|mul|div)-\d{1,3}-\d{1,3}$/));
export const promptId = v.pipe(
  v.string(),
  v.regex(
    /^((story-[a-z]+-)?(add|sub|mul|div)-\d{1,3}-\d{1,3}|copy-(0|[1-9]\d{0,2})|line-(up|down)-\d{1,2}-\d{1,3}-[a-d]-[012])$/,
  ),
);
/** A name or a line; several times what the pages let through, since files outlive their limits. */
export const shortText = text(200);

/** What every record of this version carries. */
export const stamp = {
  id,
  v: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(recordVersion)),
  seq: upTo(highestSeq),
  device: id,
  at: moment,
};

/** A record that a later version made: kept for the build that knows it, with no more asked than its stamp. */
export const laterRecord = v.looseObject({
  ...stamp,
  v: v.pipe(v.number(), v.integer(), v.minValue(recordVersion + 1), v.maxValue(Number.MAX_SAFE_INTEGER - 1)),
  kind: shortText,
  child: v.exactOptional(id),
  target: v.exactOptional(id),
  day: v.exactOptional(day),
  targetDay: v.exactOptional(day),
});

/** A whole number from 0. */
export function upTo(most: number) {
  return v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));
}

/** Any number between two. */
export function within(least: number, most: number) {
  return v.pipe(v.number(), v.minValue(least), v.maxValue(most));
}

/** Text of at most so many characters. */
export function text(most: number) {
  return v.pipe(v.string(), v.maxLength(most));
}

/** One of the words of a union: each is a key here, so that none can be forgotten. */
export function oneOf<T extends string>(words: Readonly<Record<T, true>>) {
  return v.picklist(Object.keys(words) as [T, ...T[]]);
}

/** A schema for each field of a type: none can be forgotten, whether a record must have it or may. */
export type FieldsOf<T> = { readonly [K in keyof T]-?: v.GenericSchema };
