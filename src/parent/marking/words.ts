import { type PromptId, parsePrompt } from '../../core/fact/prompt';
import { writtenFact } from '../../core/fact/written';
import { lineAsk, storyWords } from '../../core/gap-line/words';
import { isCopyRound } from '../../core/hand-round/hand-round';
import type { Marked } from '../../core/marking/marked';
import type { Ruling } from '../../core/record/household-record';
import type { Purpose, Sat } from '../../core/record/sat';
import { count, sentence } from '../words';

type MarkedPlace = Marked['places'][number];

const purposeNames: Record<Purpose, string> = {
  sheet: 'Sheet',
  row: 'Extra row',
  mending: 'Corrections',
  practice: 'Practice of the keys',
  cards: 'Card round',
  firstTry: 'First try',
  lines: 'Gap lines and stories',
};

/** What a sitting was, as its purpose and its plan tell. */
type Named = Pick<Sat, 'purpose' | 'lookBack' | 'twinOf' | 'prompts' | 'paper'>;

/** What a sitting was, as its purpose and its plan tell, and whether it was done on paper. */
export function sittingName(sat: Named): string {
  return sat.paper ? `${nameOfStep(sat)} on paper` : nameOfStep(sat);
}

function nameOfStep(sat: Named): string {
  if (sat.lookBack) return 'Look-back';
  if (sat.twinOf) return 'Similar facts';
  return isCopyRound(sat) ? 'Copying numbers' : purposeNames[sat.purpose];
}

export const markingWords = {
  title: 'Marking',
  none: 'There is no sheet yet.',
  needs: 'What needs you',
  from: (purpose: string, set: string) => `${purpose} from “${set}”.`,
  ofKept: (purpose: string) => `${purpose} on the kept sets.`,
  ofSpread: (purpose: string) => `${purpose} with a few facts from every set.`,
  alone: (purpose: string) => `${purpose}.`,
  more: 'Show older ones',
  all: 'All sittings to mark',
  gone: 'This sitting is no longer here.',
  columns: {
    place: 'No.',
    fact: 'Fact',
    given: 'Given',
    outcome: 'Outcome',
    firstKey: 'First key after',
    taken: 'Taken after',
  },
  answers: 'Answer by answer',
  keys: 'Show every key',
  noTimes: 'Times were not kept for this sitting.',
  onPaper: 'Done on paper: there are no times.',
  timesNote:
    'Times are from the card’s appearance. Touch runs longer than keys, so compare a child only with his or her own times, on one device.',
  cause: (what: string) => `Looks like: ${what}.`,
  perhapsSlip: (what: string) => `Perhaps a slip, not a miscalculation: ${what}.`,
  byBellMeans:
    'Right by the bell: answered within the time allowed. A card still open at the bell may be finished, and does not count.',
  bandMeans:
    'A band is one of four steps, by the count right by the bell. Its limits are the child’s, under Settings.',
  digitsMeans:
    'Digits right a minute: every digit of an answer that stands where the true answer has it counts for one, so an answer of two digits counts for two.',
  accept: 'Count as right',
  slip: 'A slip',
  miscalculation: 'A miscalculation',
  whole: 'The whole sitting',
  void: 'Does not count',
  notOwnWork: 'Somebody helped',
  bandAnyway: 'Give it its band',
  wrongChild: 'Another child sat it:',
  move: 'Move it',
  chooseChild: 'choose',
  rows: 'Extra rows',
  rowsAre: (rows: number) => `You sent ${count(rows, 'row', 'rows')}.`,
  /** `band` is its name; `null` where there is none, which brings no rows. */
  rowsProposed: (rows: number, band: string | null) =>
    `By Settings, ${band ?? 'a sheet without a band'} brings ${rows === 0 ? 'no extra row' : count(rows, 'extra row', 'extra rows')}.`,
  sendRows: (rows: number) => (rows === 0 ? 'No rows' : `Send ${count(rows, 'row', 'rows')}`),
  decided: 'Decided',
  undo: 'Undo',
  redo: 'Redo',
  undone: 'taken back',
  hint: 'Each ruling is a record of its own. Undo takes it back; redo brings it in again.',
} as const;

/** A prompt as written: `7 × 8`, or the number to copy. */
export function promptText(id: PromptId): string {
  const prompt = parsePrompt(id);
  if (!prompt) return id;
  switch (prompt.kind) {
    case 'fact':
      return writtenFact(prompt.fact);
    case 'copy':
      return `copy ${prompt.answer}`;
    case 'line':
      return `${prompt.shown.map((number) => number ?? '…').join(' ')}: ${lineAsk(prompt)}`;
    case 'story': {
      const { told, asked } = storyWords(prompt);
      return `${told} ${asked}`;
    }
  }
}

/** An outcome in words; `byBell` says something only where there was a bell. */
export function outcomeText(place: MarkedPlace, hadBell: boolean): string {
  const late = hadBell && !place.byBell && place.given !== null ? ', after the bell' : '';
  switch (place.outcome) {
    case 'right':
      return place.accepted ? `right by your ruling${late}` : `right${late}`;
    case 'wrong':
      return `${wrongWord(place)}${late}; the answer is ${place.answer}`;
    case 'skipped':
      return 'skipped';
    case 'notReached':
      return 'not reached';
    case 'unfinished':
      return 'unfinished when it ended';
  }
}

function wrongWord({ slip }: MarkedPlace): string {
  if (slip === null) return 'wrong';
  return slip ? 'wrong: a slip' : 'wrong: a miscalculation';
}

/** How a sitting was sat: the clock and its sight, the way of taking, how it ended. */
export function waySentence(sat: Sat): string {
  const of = sentence(count(sat.prompts.length, 'fact', 'facts'));
  if (sat.paper) return `${of} on paper, ${allowedOnPaper(sat)}; ${endWords[sat.ended]}.`;
  const clock = sat.clock
    ? `${sat.clock.allowanceMs / 1000}\u00a0s on the clock, ${sat.clock.sight === 'hidden' ? 'hidden' : 'seen as a thread drawn out along the screen'}`
    : 'without a clock';
  return `${of}, ${clock}; ${endWords[sat.ended]}.`;
}

function allowedOnPaper({ clock }: Sat): string {
  return clock ? `${clock.allowanceMs / 1000}\u00a0s on the clock` : 'without a clock';
}

const endWords: Record<Sat['ended'], string> = {
  finished: 'finished',
  bell: 'ended by the bell',
  enough: 'ended by the day’s minutes',
  stopped: 'stopped by a grown-up',
  torn: 'broken off',
};

/** The rates of a sitting, as far as its times allow. */
export function rateSentence(marked: Marked): string {
  const { factsPerMin, digitsPerMin, medianMs } = marked;
  const parts = [
    factsPerMin === null ? '' : `${factsPerMin.toFixed(1)} facts right a minute`,
    digitsPerMin === null ? '' : `${digitsPerMin.toFixed(1)} digits right a minute`,
    medianMs === null
      ? ''
      : `half of the answers were complete within ${(medianMs / 1000).toFixed(1)}\u00a0s`,
  ].filter(Boolean);
  return parts.length === 0 ? '' : `${parts.join(', ')}.`;
}

/** What is worth reading twice: never a verdict. */
export function flagSentences(marked: Marked): readonly string[] {
  return [
    marked.flags?.longSilence
      ? 'There was a long silence: it may have been a pause, or somebody asked something.'
      : '',
    marked.flags?.mashing
      ? 'Keys came faster than a fact can be read, for a while: have a look at the answers there.'
      : '',
  ].filter(Boolean);
}

/** A ruling as a line of the list of what was decided. `childName` names a child by id. */
export function rulingText(
  ruling: Ruling,
  prompts: readonly PromptId[],
  childName: (id: string) => string,
): string {
  const fact = (place: number) => {
    const prompt = prompts[place];
    return prompt === undefined ? `No. ${place + 1}` : `No. ${place + 1}, ${promptText(prompt)}`;
  };
  switch (ruling.what) {
    case 'accept':
      return `${fact(ruling.place)}: counts as right.`;
    case 'slip':
      return `${fact(ruling.place)}: ${ruling.slip ? 'a slip' : 'a miscalculation'}.`;
    case 'void':
      return 'The sitting does not count.';
    case 'wrongChild':
      return `It was ${childName(ruling.child)} who sat it.`;
    case 'notOwnWork':
      return 'Somebody helped.';
    case 'bandAnyway':
      return 'It has its band although it was interrupted.';
    case 'rows':
      return ruling.rows === 0
        ? 'No extra rows.'
        : `${sentence(count(ruling.rows, 'extra row', 'extra rows'))} sent.`;
  }
}
