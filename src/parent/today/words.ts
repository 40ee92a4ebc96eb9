import type { ChildDay } from '../../core/plan/plan-day';
import type { Step } from '../../core/plan/step';
import type { DayChange } from '../../core/record/household-record';
import type { ChildSettings, HouseholdSettings } from '../../core/record/settings';
import { resultSentence } from '../marking/result-words';
import { count, sentence } from '../words';

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
  undo: 'Undo',
  stop: 'Stop the sheet being sat',
  stopped: 'Answers given are kept.',
  handOver: (name: string) => `Hand over to ${name}`,
  whose: 'Hand over: whose cloth?',
  keptToday: 'Kept for today.',
  clockIsOn: 'The clock is on from the next sheet.',
  clockIsOff: 'The clock is off from the next sheet.',
  allowedNow: (seconds: number) => `${seconds} s are allowed from the next sheet on.`,
  chooseSet: 'Choose a set',
  read: 'Read it',
  giveBand: 'Give it its band',
  sendRows: (rows: number) => `Send ${count(rows, 'row', 'rows')}`,
  waiveRows: 'Send none',
  turnClockOn: 'Turn the clock on',
  turnClockOff: 'Leave the clock off for now',
  giveSeconds: (seconds: number) => `Allow ${seconds} s from now on`,
  trialDay: (day: number, of: number) =>
    `Day ${day} of ${of} of the clock trial: it decides about the clock.`,
  trialMissed: 'What you changed for today wins over the clock trial; its day comes again.',
  readyTitle: 'Ready to move on',
  moveOn: (from: string, to: string) => `Keep “${from}” in practice and start “${to}”`,
  movedOn: (to: string) => `“${to}” has begun, without the clock; the set before stays in practice.`,
  seeFacts: 'See the facts',
  chooseAnother: 'Choose another set',
  noSet: (name: string) => `${name} has no set to learn from.`,
  rowsWaiting: (rows: number) =>
    `The rule proposes ${count(rows, 'extra row', 'extra rows')}. ${rows === 1 ? 'It waits' : 'They wait'} for your word.`,
  rowsStopped:
    'The extra rows went as far as the rule goes, and some facts still don’t come. Tomorrow, teach them before the sheet.',
  interrupted: 'The sheet was interrupted, so it has no band unless you give it one.',
  doubtfulSlip: (places: number) =>
    `${sentence(count(places, 'wrong answer looks', 'wrong answers look'))} like a slip of the finger.`,
  waited: 'The day’s minutes were used up. What is left to mend begins the next school day.',
  spokenCheck: (facts: number) =>
    `A spoken check waits: ask ${count(facts, 'fact', 'facts')} aloud when it suits you.`,
  proposeClock: (set: string) =>
    `“${set}” is accurate: at least 45 of its last 50 answers without the clock were right. You may turn the clock on. It is yours to leave off.`,
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
  const last = day.sheets.at(-1);
  if (!last) return notSatSentence(day, settings, set);
  const { ruled, marked } = last;
  const second = ruled.sat.second ? ' It was a second sheet.' : '';
  const result = `${resultSentence(ruled.sat, marked, names)}${second}`;
  const left = leftToDo(day.steps);
  if (day.isDone || left === '') return `Done. ${result}`;
  return `Sheet done. ${result} Still to do: ${left}.`;
}

function notSatSentence(day: ChildDay, settings: ChildSettings, set: string): string {
  const sheet = day.steps.find((step) => step.what === 'sheet');
  if (!sheet) return 'Nothing to do today.';
  const { clock, prompts, spread } = sheet.plan;
  if (spread)
    return `No sheet yet: ${prompts.length} facts from every set, without the clock; day ${spread.part + 1} of 2.`;
  const way = clock ? `with ${clock.allowanceMs / 1000} s on the clock` : 'without the clock';
  const seen = clock && settings.sight === 'hidden' ? ', hidden' : '';
  return `No sheet yet: ${prompts.length} facts of “${set}”, ${way}${seen}.`;
}

function leftToDo(steps: readonly Step[]): string {
  const rows = steps.filter((step) => step.what === 'row').length;
  const parts = [
    rows > 0 ? 'an extra row' : '',
    steps.some((step) => step.what === 'mending') ? 'mending' : '',
    steps.some((step) => step.what === 'sheet') ? 'a sheet' : '',
  ];
  return parts.filter(Boolean).join(', ');
}

/** What was changed for today, one sentence for each change that still stands. */
export function changeSentences(change: DayChange, settings: ChildSettings): readonly ChangeInForce[] {
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
  if (change.skip) inForce.push({ says: 'Skipped today.', takeBack: { skip: false } });
  return inForce;
}

/** A change that stands, and the change that takes it back. */
export interface ChangeInForce {
  readonly says: string;
  readonly takeBack: DayChange;
}
