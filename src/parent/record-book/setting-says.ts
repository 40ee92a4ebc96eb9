import type { ChildSettings, HouseholdSettings } from '../../core/record/settings';
import { listed } from '../words';

type Says<T> = { readonly [K in keyof T]: (value: T[K]) => string };

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const every = (sheets: number, what: string) =>
  sheets === 0 ? `no ${what}` : `a ${what} every ${sheets} sheets`;

/** Each of a child's settings as part of a sentence. */
const childSays: Says<ChildSettings> = {
  length: (length) => `${length} facts on a sheet`,
  timed: (isTimed) => (isTimed ? 'with the clock' : 'without the clock'),
  allowanceS: (seconds) => `${seconds} s allowed`,
  sight: (sight) => (sight === 'thread' ? 'the clock seen as a thread' : 'the clock hidden until the bell'),
  takesItself: (does) =>
    does ? 'answers taken by themselves with the clock' : 'the done key for every answer',
  limits: ({ firm, even, loose }) => `bands from ${firm}, ${even} and ${loose} of 25`,
  rows: ({ firm, even, loose, thin }) => `extra rows by band: ${firm}, ${even}, ${loose}, ${thin}`,
  rowsSent: (by) => (by === 'itself' ? 'extra rows come by themselves' : 'extra rows are sent by you'),
  keptShare: (share) => `${Math.round(share * 100)} in 100 facts from kept sets`,
  layout: (layout) => (layout === 'across' ? 'facts written across' : 'facts written one over the other'),
  keepTimes: (does) => (does ? 'times are kept' : 'times are not kept'),
  keypad: (keypad) => (keypad === 'phone' ? 'keys as on a phone' : 'keys as on a calculator'),
  hand: (hand) => `the keys on the ${hand}`,
  setOrder: (order) => (order.length === 0 ? 'sets in the usual order' : 'sets in an order of your own'),
  minutes: (minutes) => `at most ${minutes} minutes a day`,
  schoolDays: (days) =>
    days.length === 0
      ? 'no school days'
      : `school on ${listed(days.map((day) => weekdays[day - 1] ?? String(day)))}`,
  cards: (has) => (has ? 'with card rounds' : 'without card rounds'),
  newFacts: (facts) =>
    facts === null ? 'new facts at the child’s own rate' : `${facts} new facts in a round`,
  lookBackEvery: (sheets) => every(sheets, 'look-back sheet'),
  spokenEvery: (sheets) => every(sheets, 'spoken check'),
  gapLines: (has) => (has ? 'gap lines at the end of a day' : 'no gap lines'),
};

const householdSays: Says<HouseholdSettings> = {
  bandNames: ({ firm, even, loose, thin }) => `the bands are called ${listed([firm, even, loose, thin])}`,
  sounds: (on) => (on ? 'sounds on' : 'sounds off'),
  keySound: (on) => (on ? 'keys sound' : 'keys make no sound'),
  paperSize: (size) =>
    size === null ? 'paper as usual here' : `paper of ${size === 'a4' ? 'A4' : 'US Letter'} size`,
};

/** What a change of a child's settings says, without the name. */
export function childSettingsSaid(changes: Partial<ChildSettings>): string {
  return said(childSays, changes);
}

export function householdSettingsSaid(changes: Partial<HouseholdSettings>): string {
  return said(householdSays, changes);
}

// Names that this version does not know are passed over: a later one may have set them.
function said<T extends object>(says: Says<T>, changes: Partial<T>): string {
  const parts = (Object.keys(says) as (keyof T)[]).flatMap((key) => {
    const value = changes[key];
    return value === undefined ? [] : [says[key](value)];
  });
  return parts.length === 0 ? 'nothing this version knows' : parts.join('; ');
}
