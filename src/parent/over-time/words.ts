import type { AnswerFlag } from '../../readings/errors/answer-flags';
import type { Conditions } from '../../readings/rates/conditions';
import type { PublishedRange } from '../../readings/rates/published-ranges';
import { count, sentence } from '../words';

export const overTimeWords = {
  title: 'Over time',
  nobody: 'No sheet has been sat yet. What changes from sheet to sheet will stand here.',
  howFarBack: 'How far back',
  spans: { 84: 'Twelve weeks', 365: 'A year', 0: 'Everything' } as Readonly<Record<number, string>>,
  counts: 'The count, from sheet to sheet',
  think: 'Think time',
  minutes: 'Minutes a day',
  causes: 'Wrong answers: what they look like',
  clock: 'Days with the clock and days without',
  rates: 'Facts and digits a minute',
  byBell: 'Right by the bell',
  atEase: 'Right without the clock',
  thinkTitle: 'Usual think time of right answers, in seconds, on sheets without the clock',
  minutesTitle: 'Minutes of sitting, sheets with their rows and corrections',
  causesTitle: 'How many wrong answers carry each mark',
  clockTitle: 'Time to the first key, days with the clock against days without',
  factsWith: 'Facts right a minute, with the clock',
  factsWithout: 'Facts right a minute, without the clock',
  digitsWith: 'Digits right a minute, with the clock',
  digitsWithout: 'Digits right a minute, without the clock',
  thinkNote:
    'Think time is the time to the first key less what the hands alone need to copy a number. Here it is that of sheets without the clock; how days with the clock differ is told further down, fact by fact.',
  noThink:
    'There is none yet: it takes sheets without the clock, times that are kept, and a round of copied numbers.',
  breakNote: 'A dotted upright: something changed (the table says what), and nothing is compared across it.',
  lineNote: 'rising or falling on the whole, beyond chance',
  interrupted: 'interrupted',
  interruptedNote: 'interrupted: its count says little, and it is in no line',
  limitNote: 'where a band begins: the count right by the bell falls into one of four',
  countsNote: 'Look-backs, which ask the kept sets, and second sheets of a day are not shown.',
  withMark: 'with the clock',
  withoutMark: 'without the clock',
  chanceNote: 'The upright on a bar is what blind chance alone would give.',
  overlap: 'One answer may carry several marks, so the bars don’t add up.',
  columns: {
    day: 'Day',
    value: 'Value',
    of: 'Of',
    set: 'Set',
    changed: 'What changed',
    minutes: 'Minutes',
    sittings: 'Sittings',
    cause: 'What the wrong answer is',
    seen: 'Seen',
    chance: 'By chance',
    lift: 'Times as often',
    share: 'Share',
  },
  inAll: (wrong: number, skipped: number) =>
    `${wrong} wrong ${wrong === 1 ? 'answer' : 'answers'} on sheets in all${skipped > 0 ? `, and ${skipped} skipped` : ''}.`,
  /** How the parent's rulings went into the count of wrong answers; empty where there are none. */
  ruledIn: (slips: number, accepted: number) =>
    [
      slips > 0
        ? `${sentence(count(slips, 'answer', 'answers'))} you called a slip: counted among them.`
        : '',
      accepted > 0 ? `${sentence(count(accepted, 'answer', 'answers'))} you accepted: not counted.` : '',
    ]
      .filter(Boolean)
      .join(' '),
  tooFewWrong: 'Too few to share out.',
  says: (title: string, sheets: number, from: string, to: string, low: string, high: string) =>
    `${title}: ${sheets} ${sheets === 1 ? 'day' : 'days'} from ${from} to ${to}, between ${low} and ${high}.`,
  causesSay: (first: string, hits: number, of: number) =>
    `Of ${of} wrong answers most often: ${first}, ${hits} times.`,
  ratioSays: (ratio: string, low: string, high: string) =>
    `Answers took ${ratio} times as long on days with the clock, most likely between ${low} and ${high} times.`,
  ratioColumns: ['With the clock', 'Times as long'],
  ratioRows: { middle: 'in the middle', low: 'most likely at least', high: 'most likely at most' },
  shorter: 'quicker with it',
  same: 'the same',
  longer: 'slower with it',
  alike: 'Digits right a minute say the same.',
  published: 'What has been published, and for what',
  publishedLead:
    'Nobody has published ranges for answers keyed on a screen. These are for digits written with a pencil on sheets that mix several skills, so they are no mark to reach here. Rates don’t compare across sets either: some sets have more digits to write.',
  publishedColumns: ['For', 'Digits right a minute', 'School grades', 'Called', 'Source'],
} as const;

export const conditionNames: Readonly<Record<keyof Conditions, string>> = {
  set: 'another set',
  length: 'the sheet’s length',
  allowanceMs: 'the allowed time',
  sight: 'the sight of the clock',
  takesItself: 'how answers are taken',
  entry: 'keys, touch or paper',
  device: 'another device',
  onsetBy: 'how exactly the start of a card is known',
};

export const causeNames: Readonly<Record<AnswerFlag, string>> = {
  operand: 'the answer to a neighbour in the table (7 × 7 for 7 × 8)',
  closeOperand: 'the answer to a near neighbour in the table',
  table: 'another answer of the tables',
  nonTable: 'a number that is in no table',
  otherOperation: 'the answer to another operation (7 + 8 for 7 × 8)',
  operandNamed: 'one of the two numbers asked',
  offByOne: 'one too many or one too few',
  offByTwo: 'two too many or two too few',
  countingString: 'the next number after one of the two',
  tenSlip: 'ten too many or ten too few',
  reversal: 'the right digits, turned round',
  runTogether: 'the two numbers side by side',
  keyingSlip: 'a key next to the right one, or a digit doubled or dropped',
  perseveration: 'the answer of the card before',
};

const levels: Readonly<Record<PublishedRange['level'], string>> = {
  frustration: 'too hard yet',
  instruction: 'being learned',
  mastery: 'mastered',
};

/** A published range as a row of the table: what it is for, and whether its source was seen. */
export function rangeRow(range: PublishedRange): readonly string[] {
  return [
    range.probe,
    fromTo(range.digitsPerMin),
    fromTo(range.grades),
    levels[range.level],
    range.source + (range.seen === 'memory' ? ', as commonly quoted' : ''),
  ];
}

function fromTo([from, to]: readonly [number, number | null]): string {
  return to === null ? `${from} and more` : `${from} to ${to}`;
}
