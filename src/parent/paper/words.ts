import type { CodeFault } from '../../core/paper/paper-code';
import type { Step } from '../../core/plan/step';
import { count } from '../words';

/** What the page is for: its three parts. */
export type PaperPart = 'result' | 'print' | 'clock';

/** What can be printed. */
export type PrintWhat = 'sheets' | 'cards' | 'lines' | 'grid' | 'cloth';

export const paperPageWords = {
  title: 'Paper',
  parts: 'Parts of this page',
  part: { result: 'Enter a result', print: 'Print', clock: 'Run the clock' } satisfies Record<
    PaperPart,
    string
  >,
} as const;

export const printWords = {
  what: 'What to print',
  whats: {
    sheets: 'Sheets',
    cards: 'Flash cards',
    lines: 'Gap lines and stories',
    grid: 'The fact grid',
    cloth: 'The long cloth',
  } satisfies Record<PrintWhat, string>,
  who: 'For whom',
  noSet: (name: string) => `${name} has no set yet`,
  set: 'From which set',
  ownSet: 'Each child’s own',
  from: 'First day',
  days: 'School days',
  oneDay: 'one day',
  manyDays: (days: number) => `${days} days`,
  key: 'With the key',
  nameLine: 'A line for the name',
  operation: 'Which facts',
  size: 'Paper',
  sizes: { a4: 'A4', letter: 'US Letter' },
  both: 'Print on both sides, turned over the long edge: each answer then lies behind its fact. Cut along the dashes.',
  dialog: 'In the print window leave the scale at 100 % and the margins as they are.',
  preview: 'What is printed',
  print: 'Print',
  printSheets: (sheets: number) => `Print ${count(sheets, 'sheet', 'sheets')}`,
  printed: (sheets: number) =>
    `${sheets === 1 ? 'The sheet is' : `The ${count(sheets, 'sheet', 'sheets')} are`} written down, to be found again by day or code.`,
  again: 'Print these again',
  more: 'Print others',
  nothing: 'Tick a child with a set.',
  noPieces: 'There is no piece yet.',
} as const;

export const resultWords = {
  code: 'Code at the foot of the sheet',
  codeHint: 'The first four digits are mostly enough.',
  lead: 'Or choose the sheet:',
  none: 'No sheet is waiting to be entered. What you print here can be found again here.',
  noMatch: 'No sheet printed here begins so. Type the whole code.',
  sheet: (name: string, set: string, facts: number) => `${name}: ${set}, ${facts} facts`,
  entered: 'Entered already',
  read: 'Read it',
  reprint: 'Print again',
  older: 'Show older ones',
  whose: 'Whose sheet',
  day: 'Done on',
  today: (day: string) => `Today, ${day}`,
  clock: (seconds: number) => `With the clock, ${seconds} s`,
  tapReached: 'Tap the last one answered by the bell.',
  tapDone: 'Tap the last one done.',
  all: (facts: number) => `All ${facts}`,
  tapWrong: 'Tap each one that is wrong; twice if it was left blank.',
  farther: 'The bell was at another one',
  notDone: 'It was not finished',
  wrote: (fact: string) => `What was written for ${fact}? It may stay empty.`,
  right: 'right',
  wrong: 'wrong',
  wroteShort: (given: string) => `wrote ${given}`,
  blank: 'left blank',
  notReached: 'not reached',
  keep: 'Keep this result',
  kept: (result: string) => `Kept. ${result}`,
  close: 'Another sheet',
  second: 'There is a sheet on that day already: this one is kept as a second, without a band.',
  keys: 'With a keyboard: arrows to move, Enter to tap, digits for what was written.',
} as const;

/** Why a code leads to no sheet, as a plain sentence. */
export const codeFaults: Readonly<Record<CodeFault | 'elsewhere', string>> = {
  notDigits: 'A code has digits only.',
  length: 'A code has ten digits: four, three and three.',
  check: 'One digit of this code is mistyped. Compare it with the sheet.',
  noSet: 'This code is of a set that is not on this device.',
  elsewhere:
    'This sheet was printed on another device and mixes in facts kept from before, which only that device knows. Enter it there, or bring its records here first.',
};

type PaperStep = Extract<Step['what'], 'row' | 'mending' | 'twin'>;

export const stepWords: Readonly<
  Record<PaperStep, { title: (name: string) => string; lead: string; keep: string }>
> = {
  row: {
    title: (name) => `${name}: an extra row`,
    lead: 'On paper too? Let these be written without the clock, then tap each one that is wrong.',
    keep: 'Keep this row',
  },
  mending: {
    title: (name) => `${name}: to put right`,
    lead: 'Put right on paper? Then keep it here; or leave it for the screen.',
    keep: 'They are put right',
  },
  twin: {
    title: (name) => `${name}: another of the same kind`,
    lead: 'Each miscalculated fact is followed by one of its kind. On paper too? Tap what is wrong.',
    keep: 'Keep these',
  },
};

export const clockWords = {
  lead: 'For a sheet on paper. A thread runs out, a soft bell rings; there are no numbers.',
  seconds: 'Seconds',
  hidden: 'Hide the thread; only the bell',
  start: 'Start',
  stop: 'Stop',
  running: 'The clock runs',
  bell: 'The bell has rung.',
  result: 'Enter the result',
  again: 'Once more',
  fault: (least: number, most: number) => `A number of seconds from ${least} to ${most}.`,
  soundsOff: 'Sounds are off in Settings: the screen alone will tell.',
} as const;
