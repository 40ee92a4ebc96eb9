import type { BandNameFault } from './band-names';
import { longestAllowanceS, type NumberFault, type NumberKey } from './number-rules';

export const settingsWords = {
  title: 'Settings',
  household: 'The household',
  forChild: (name: string) => `For ${name}`,
  child: 'Child',
  save: 'Keep these numbers',
  saved: 'Kept.',
  lookAgain: 'Nothing was kept yet: one of the numbers needs another look.',
  nothingChanged: 'Nothing was changed.',
  usual: (value: string) => `Usually ${value}.`,
  toUsual: 'Put the usual numbers in',
  bandNames: 'Names of the bands',
  bandNamesLead: 'From the closest weave to the most open. Every child’s pages use them.',
  bandNumber: (number: number) => `Band ${number}`,
  saveNames: 'Keep these names',
  sounds: 'Sounds: start, bell and a finished piece',
  keySound: 'A soft sound for each key',
  numbers: 'Numbers',
  clock: 'The clock',
  timed: 'Sheets are sat',
  timedNo: 'without a clock',
  timedYes: 'with a clock',
  timedHint:
    'Whether timed practice makes children anxious is disputed; some children dislike it. The clock is yours to leave off. Usually without, until the set is accurate.',
  sight: 'The clock, when there is one, is',
  sightThread: 'seen, as a thread along the hem',
  sightHidden: 'hidden until the bell',
  sightHint: 'Usually seen.',
  takes: 'On a timed sheet, take an answer by itself once it has all its digits. Usually on.',
  rows: 'Extra rows are sent',
  rowsItself: 'by themselves',
  rowsParent: 'on your word',
  rowsHint: 'Usually by themselves. On your word, the child’s day does not wait for you.',
  layout: 'Facts are written',
  layoutAcross: 'across',
  layoutStacked: 'one number under the other',
  layoutHint: 'Usually across.',
  keepTimes:
    'Keep the times of answers. Usually on. Turned off, none is stored from the next sitting on, and those stored stay.',
  keypad: 'The keypad begins with',
  keypadPhone: '1 2 3 at the top, as on a phone',
  keypadCalculator: '7 8 9 at the top, as on a calculator',
  keypadHint: 'Usually as on a phone.',
  hand: 'In landscape the keypad stands',
  handRight: 'on the right',
  handLeft: 'on the left',
  handHint: 'Usually on the right.',
  morning: 'The morning',
  minutes: 'A day’s work lasts at most',
  minutesHint: 'Usually 15 minutes at the cards; what is left then waits for the next school day.',
  minutesOf: (minutes: number) => `${minutes} minutes`,
  schoolDays: 'School days',
  schoolDaysHint: 'Usually Monday to Friday. On other days nothing is asked, and nothing heaps up.',
  weekdays: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
  lastSchoolDay: 'One school day has to stay.',
  cards: 'Card rounds before the sheet: needed while a set is new, later the child’s choice. Usually on.',
  newFacts: 'New facts in a card round',
  newFactsHint:
    'Usually as many as the child takes in, from 4 at the start, never under 2 or over 8: that keeps more than a fixed 2 or 8 (Burns and others, 2016).',
  newFactsFollow: 'as many as the child takes in',
  lookBackEvery: 'A look-back takes the place of',
  lookBackHint: 'Usually every 5th finished sheet. It asks what was learned before, without the clock.',
  lookBackNone: 'no sheet',
  everyNth: (every: number) => `every ${every}${every === 3 ? 'rd' : every === 2 ? 'nd' : 'th'} sheet`,
  spokenEvery: 'A spoken check comes with',
  spokenHint:
    'Usually every 10th finished sheet, look-backs counted. Two to five facts wait for you to ask them aloud; the day does not wait.',
  spokenNone: 'no sheet',
  gapLines: 'End the day with a gap line and a story. They have no band. Usually off.',
  gate: 'PIN and recovery code',
  changePin: 'Change the PIN',
  savePin: 'Keep this PIN',
  pinChanged: 'The PIN is changed. The recovery code stays the same.',
  newCode: 'Make a new recovery code',
  newCodeLead: 'The old code holds until you say that the new one is written down.',
  codeChanged: 'The new recovery code holds from now on.',
  cancel: 'Leave it as it is',
} as const;

interface NumberWords {
  readonly label: string;
  readonly unit: string;
  readonly hint?: string;
}

export const numberWords: Record<NumberKey, NumberWords> = {
  length: { label: 'Length of a sheet', unit: 'facts' },
  allowanceS: { label: 'Time allowed with the clock', unit: 'seconds' },
  keptPercent: { label: 'Share of a sheet from kept sets', unit: '%' },
  firm: { label: 'Right by the bell, from', unit: 'of 25' },
  even: { label: 'Right by the bell, from', unit: 'of 25' },
  loose: { label: 'Right by the bell, from', unit: 'of 25' },
  rowsFirm: { label: 'Extra rows', unit: 'rows' },
  rowsEven: { label: 'Extra rows', unit: 'rows' },
  rowsLoose: { label: 'Extra rows', unit: 'rows' },
  rowsThin: { label: 'Extra rows', unit: 'rows' },
};

export const limitsLead =
  'The limits are for a sheet of 25; another length scales them, rounded up. They are common practice with pencil and paper. The lowest band is whatever falls under the last limit. By the bell: answers taken within the time allowed.';

export const numberFaults: Record<NumberFault, string> = {
  notWhole: 'This needs a whole number.',
  length: 'A sheet has 5 to 100 facts, in rows of five: 5, 10, 15 and so on.',
  allowanceZero: 'With 0 seconds nothing could be answered. To do without a clock, choose “without a clock”.',
  allowanceRange: `The time allowed is 5 to ${longestAllowanceS} seconds.`,
  keptRange: 'The share is 0 to 80 %, so that the set itself still comes.',
  limitRange: 'A limit is 1 to 25.',
  limitOrder: 'Each limit has to be lower than the one before it.',
  rowsRange: 'A band brings 0 to 5 rows.',
};

export const bandNameFaults: Record<BandNameFault, string> = {
  empty: 'A band needs a name.',
  tooLong: 'A band’s name can have up to 16 letters.',
  twice: 'Two bands have this name. Give one of them another.',
};
