import type { Band } from '../marking/band';
import type { Id } from './stamp';

/** Where the allowed time shows: a thread in the hem, or nowhere until the bell. */
export type Sight = 'thread' | 'hidden';

/** One child's settings. Times in seconds, lengths in facts, `keptShare` 0 to 1. */
export interface ChildSettings {
  readonly length: number;
  readonly timed: boolean;
  readonly allowanceS: number;
  readonly sight: Sight;
  /** A timed sheet takes an answer by itself once it has as many digits as the fact's answer. */
  readonly takesItself: boolean;
  /** Lowest count right by the bell, of 25, for each band above the lowest. */
  readonly limits: { readonly firm: number; readonly even: number; readonly loose: number };
  readonly rows: Readonly<Record<Band, number>>;
  readonly rowsSent: 'itself' | 'parent';
  /** Share of a sheet that comes from kept sets. */
  readonly keptShare: number;
  readonly layout: 'across' | 'stacked';
  readonly keepTimes: boolean;
  readonly keypad: 'phone' | 'calculator';
  readonly hand: 'right' | 'left';
  /** Ids of sets in the parent's own order; those not named keep their place in the default order. */
  readonly setOrder: readonly Id[];
  /** How long a day's work at the cards lasts at most, in minutes; the rest waits for the next day. */
  readonly minutes: number;
  /** Days of the week with school, 1 Monday to 7 Sunday; on the others nothing is asked. */
  readonly schoolDays: readonly number[];
  /** Whether there are card rounds. */
  readonly cards: boolean;
  /** New facts in a card round, 2 to 8; `null` follows the child's own rate of taking them in. */
  readonly newFacts: number | null;
  /** Every so many finished sheets one is a look-back; 0 for none. */
  readonly lookBackEvery: number;
  /** With every so many finished sheets, look-backs among them, a spoken check waits for the parent; 0 for none. */
  readonly spokenEvery: number;
  /** Whether the day ends with a gap line and a story. */
  readonly gapLines: boolean;
}

/** What holds for the whole household. */
export interface HouseholdSettings {
  readonly bandNames: Readonly<Record<Band, string>>;
  readonly sounds: boolean;
  readonly keySound: boolean;
  /** What is printed on; `null` follows the device's language. */
  readonly paperSize: 'a4' | 'letter' | null;
}

/** The trade's defaults (common practice, no source), every one editable per child. */
export const defaultChildSettings: ChildSettings = {
  length: 25,
  timed: false,
  allowanceS: 45,
  sight: 'thread',
  takesItself: true,
  limits: { firm: 20, even: 15, loose: 10 },
  rows: { firm: 0, even: 0, loose: 1, thin: 2 },
  rowsSent: 'itself',
  keptShare: 0.2,
  layout: 'across',
  keepTimes: true,
  keypad: 'phone',
  hand: 'right',
  setOrder: [],
  // About 10 for cards and sheet (IES/WWC 2009), the rest for what comes before and after them.
  minutes: 15,
  schoolDays: [1, 2, 3, 4, 5],
  cards: true,
  newFacts: null,
  lookBackEvery: 5,
  spokenEvery: 10,
  gapLines: false,
};

/** Settings as a record changes them; an older one says only whether there are spoken checks. */
export type SettingsChange = Partial<ChildSettings> & { readonly spokenChecks?: boolean };

/** A change of settings in today's terms. */
export function readChange({ spokenChecks, ...changes }: SettingsChange): Partial<ChildSettings> {
  if (spokenChecks === undefined) return changes;
  return { spokenEvery: spokenChecks ? defaultChildSettings.spokenEvery : 0, ...changes };
}

/** Band names are a weave's firmness; a parent can rename them. */
export const defaultHouseholdSettings: HouseholdSettings = {
  bandNames: { firm: 'Firm', even: 'Even', loose: 'Loose', thin: 'Thin' },
  sounds: true,
  keySound: false,
  paperSize: null,
};
