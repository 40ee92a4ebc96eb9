import type { ChildDay } from '../../core/plan/plan-day';
import type { Step, Waiting } from '../../core/plan/step';
import type { DayChange, LaterStep } from '../../core/record/household-record';
import type { ChildSettings, HouseholdSettings } from '../../core/record/settings';
import { resultSentence } from '../marking/result-words';
import { count, listed, sentence } from '../words';

export const todayWords = {
  title: 'Today',
  needs: 'What needs you',
  nothing: 'Nothing needs you.',
  only: 'Only today …',
  onlyFor: (name: string) => `Only today, for ${name}`,
  endsAtNight: 'It ends at night; tomorrow is as usual.',
  withoutClock: 'Without the clock',
  withClock: 'With the clock',
  shorter: (facts: number) => `${facts} facts`,
  skip: 'Skip today',
  school: 'School today',
  undo: 'Undo',
  stop: 'Stop the sheet being sat',
  begun:
    'Begun and not finished yet: it goes on where it was left. What you change now holds from the next sheet.',
  stopped: 'Answers given are kept.',
  handOver: (name: string) => `Hand over to ${name}`,
  whose: 'Hand over: who is next?',
  keptToday: 'Kept for today.',
  clockIsOn: 'The clock is on from the next sheet.',
  clockIsOff: 'The clock is off from the next sheet.',
  allowedNow: (seconds: number) => `${seconds}\u00a0s are allowed from the next sheet on.`,
  chooseSet: 'Choose a set',
  read: 'Read it',
  giveBand: 'Give it its band',
  sendRows: (rows: number) => `Send ${count(rows, 'row', 'rows')}`,
  waiveRows: 'Send none',
  turnClockOn: 'Turn the clock on',
  turnClockOff: 'Leave the clock off for now',
  findOut: 'Find out: a clock trial',
  giveSeconds: (seconds: number) => `Allow ${seconds}\u00a0s from now on`,
  trialDay: (day: number, of: number) =>
    `Day ${day} of ${of} of the clock trial: it decides about the clock.`,
  trialMissed: 'What you changed for today holds over the clock trial; its day comes again.',
  readyTitle: 'Ready to move on',
  moveOn: (from: string, to: string) => `Keep “${from}” in practice and start “${to}”`,
  movedOn: (to: string) => `“${to}” has begun, without the clock; the set before stays in practice.`,
  seeFacts: 'See the facts',
  chooseAnother: 'Choose another set',
  noSet: (name: string) => `${name} has no set to learn from.`,
  rowsWaiting: (rows: number) =>
    `By Settings this count brings ${count(rows, 'extra row', 'extra rows')}. ${rows === 1 ? 'It waits' : 'They wait'} for your word.`,
  rowsStopped:
    'The extra rows went as far as the rule goes, and some facts still don’t come. Tomorrow, teach them before the sheet.',
  interrupted: 'The sheet was interrupted, so it has no band unless you give it one.',
  doubtfulSlip: (places: number) =>
    `${sentence(count(places, 'wrong answer looks', 'wrong answers look'))} like a slip of the finger.`,
  slipMeans:
    'A slip is only put right. A miscalculation is put right and followed by a similar fact; that is what happens if you say nothing.',
  slipRow: (fact: string, given: string, what: string) => `${fact}: wrote ${given}. Looks like: ${what}.`,
  slip: 'A slip',
  miscalculation: 'A miscalculation',
  slipOf: (fact: string) => `A slip: ${fact}`,
  miscalculationOf: (fact: string) => `A miscalculation: ${fact}`,
  ruledSlip: (fact: string, isSlip: boolean) => `${fact}: ${isSlip ? 'a slip' : 'a miscalculation'}.`,
  spokenCheck: (facts: number) =>
    `A spoken check waits: ask ${count(facts, 'fact', 'facts')} aloud when it suits you. The day does not wait for it.`,
  openSpoken: 'Open the spoken check',
  monday: 'What to teach on Monday',
  firstTryYours: (facts: string) => `First try: had already ${facts}.`,
  firstTryNone: 'First try: none was had already.',
  firstTryTeach: (facts: string) => `To teach: ${facts}.`,
  firstTryAll: 'Nothing of it is to be taught.',
  anotherDay: 'Another day:',
  proposeClock: (set: string) =>
    `“${set}” is accurate: at least 45 of the last 50 answers to it without the clock were right. You may turn the clock on. It is yours to leave off.`,
  bandsMean: (names: HouseholdSettings['bandNames']) =>
    `${names.firm}, ${names.even}, ${names.loose}, ${names.thin}: four steps, by how many are right by the bell.`,
  allArchived: 'No child is being taught at the moment.',
} as const;

/** A child's day in one line. `set` is the name of the current set. */
export function daySentence(
  day: ChildDay | null,
  settings: ChildSettings,
  names: HouseholdSettings['bandNames'],
  set: string,
): string {
  if (!day) return 'Reading the day …';
  if (day.isSkipped) return 'Skipped for today.';
  if (day.isFree) return 'No school today: nothing is asked. A sheet is there for a child who wants one.';
  const last = day.sheets.at(-1);
  if (!last) return notSatSentence(day, settings, set);
  const { ruled, marked } = last;
  const second = ruled.sat.second ? ' It was a second sheet.' : '';
  const lookBack = ruled.sat.lookBack ? 'Look-back: ' : '';
  const result = `${lookBack}${resultSentence(ruled.sat, marked, names)}${second}`;
  const left = leftToDo(day.steps);
  if (day.isDone || left === '') return `Done. ${result}`;
  return `Sheet done. ${result} Still to do: ${left}.`;
}

function notSatSentence(day: ChildDay, settings: ChildSettings, set: string): string {
  const sheet = day.steps.find((step) => step.what === 'sheet');
  if (!sheet) {
    const left = leftToDo(day.steps);
    return left === '' ? 'Nothing to do today.' : `Still to do: ${left}.`;
  }
  const { clock, prompts, spread, lookBack } = sheet.plan;
  if (lookBack)
    return `No sheet yet: today a look-back of ${prompts.length} facts from the kept sets, without the clock.`;
  if (spread)
    return `No sheet yet: ${prompts.length} facts from every set, without the clock; day ${spread.part + 1} of 2.`;
  const way = clock ? `with ${clock.allowanceMs / 1000}\u00a0s on the clock` : 'without the clock';
  const seen = clock && settings.sight === 'hidden' ? ', hidden' : '';
  return `No sheet yet: ${prompts.length} facts of “${set}”, ${way}${seen}.`;
}

function leftToDo(steps: readonly Step[]): string {
  const rows = steps.filter((step) => step.what === 'row').length;
  const has = (what: Step['what']) => steps.some((step) => step.what === what);
  const parts = [
    has('firstTry') ? 'a first try' : '',
    has('cards') ? 'cards' : '',
    rows > 0 ? 'an extra row' : '',
    has('mending') ? 'putting wrong answers right' : '',
    has('twin') ? `a similar fact for each${has('mending') ? '' : ' wrong answer'}` : '',
    has('lines') ? 'gap lines' : '',
    has('sheet') ? 'a sheet' : '',
  ];
  return parts.filter(Boolean).join(', ');
}

/** What was changed for today, one sentence for each change that still stands. */
export function changeSentences(
  change: DayChange,
  settings: ChildSettings,
  hasSat: boolean,
): readonly ChangeInForce[] {
  const inForce: ChangeInForce[] = [];
  if (change.timed !== undefined && change.timed !== settings.timed) {
    inForce.push({
      says: change.timed ? 'With the clock today.' : 'Without the clock today.',
      takeBack: { timed: settings.timed },
    });
  }
  if (change.length !== undefined && change.length !== settings.length) {
    inForce.push({
      says: `${sentence(count(change.length, 'fact', 'facts'))} today.`,
      takeBack: { length: settings.length },
    });
  }
  const later = change.later ?? [];
  for (const step of later) {
    // A look-back put off has its sheet sat instead: nothing is left to take back.
    if (step === 'lookBack' && hasSat) continue;
    inForce.push({
      says: laterSentences[step],
      takeBack: { later: later.filter((other) => other !== step) },
    });
  }
  if (change.school) inForce.push({ says: 'School today.', takeBack: { school: false } });
  if (change.skip) inForce.push({ says: 'Skipped today.', takeBack: { skip: false } });
  return inForce;
}

/** A change that stands, and the change that takes it back. */
export interface ChangeInForce {
  readonly says: string;
  readonly takeBack: DayChange;
}

const laterSentences: Record<LaterStep, string> = {
  firstTry: 'The first try on another day.',
  cards: 'The cards on another day.',
  sheet: 'The sheet on another day.',
  lookBack: 'You put off the look-back: today’s sheet is an ordinary one.',
  rows: 'The extra rows not today.',
  mending: 'Putting wrong answers right on another day.',
  lines: 'Gap lines on another day.',
};

/** A step as it is handed to another day. */
export const laterNames: Record<LaterStep, string> = {
  firstTry: 'the first try',
  cards: 'the cards',
  sheet: 'the sheet',
  lookBack: 'the look-back',
  rows: 'the extra rows',
  mending: 'the corrections',
  lines: 'the gap lines',
};

/** Which of today's steps can be handed to another day. */
export function laterSteps(steps: readonly Step[]): readonly LaterStep[] {
  return [...new Set(steps.flatMap((step) => laterOf(step)))];
}

function laterOf(step: Step): readonly LaterStep[] {
  switch (step.what) {
    case 'sheet':
      return step.plan.lookBack ? ['lookBack', 'sheet'] : ['sheet'];
    case 'row':
      return ['rows'];
    case 'mending':
    case 'twin':
      return ['mending'];
    case 'firstTry':
    case 'cards':
    case 'lines':
      return [step.what];
    case 'told':
    case 'practice':
    case 'piece':
      return [];
  }
}

/** What the day's minutes left undone, and when it comes again. */
export function waitedSentence(waits: readonly Waiting[]): string {
  const left = waits.map(({ step, count: many }) => waitingNames[step](many));
  const tomorrow = waits.some(({ step }) => step === 'mending' || step === 'twin');
  const rows = waits.some(({ step }) => step === 'row');
  return [
    `The day’s minutes are used up. Left undone: ${listed(left)}.`,
    tomorrow ? ' Putting right begins the next school day.' : '',
    rows ? ' Extra rows do not come again.' : '',
  ].join('');
}

const waitingNames: Record<Waiting['step'], (many: number) => string> = {
  sheet: () => 'the sheet',
  row: (many) => count(many, 'extra row', 'extra rows'),
  mending: (many) => count(many, 'fact to put right', 'facts to put right'),
  twin: (many) => count(many, 'similar fact', 'similar facts'),
  lines: () => 'the gap lines',
};
