import type { PromptId } from '../fact/prompt';
import { copyNumbers, isCopyRound, isCopyRoundDue } from '../hand-round/hand-round';
import type { SittingPlan } from '../record/sat';
import type { Hands } from '../summary/summary';
import type { DaySource } from './day-source';
import { seedFor } from './seed';
import type { Step } from './step';

/** How many numbers are copied to practise a way of taking answers (design: a practice of five). */
export const practiceLength = 5;

/** A practice that is broken off as often as that waits for another day. */
const triesADay = 2;

/**
 * The copies a day begins with: a part of the hand-time round, or where no times are kept the practice of five. Nothing
 * the child has not keyed before comes ahead of it.
 */
export function firstCopies(source: DaySource): readonly Step[] {
  if (practicesToday(source, false).length > 0) return [];
  if (isRoundDue(source)) return [practiceOf(source, copyNumbers(seedOf(source, 'copies')))];
  return source.summary.practised.done ? [] : [practiceOf(source, fiveNumbers(source))];
}

/** The second part of the first hand-time round, at the end of the day its first part began. */
export function secondCopies(source: DaySource): readonly Step[] {
  const hands = handsOf(source);
  const rounds = practicesToday(source, false).filter(({ sat }) => isCopyRound(sat));
  if (hands?.copied !== 1 || rounds.length !== 1 || !isRoundDue(source)) return [];
  return [practiceOf(source, copyNumbers(seedOf(source, 'copies again')))];
}

/** The practice of answers that take themselves, before the first sheet that does so. */
export function practiceBefore(source: DaySource, { takesItself }: SittingPlan): readonly Step[] {
  const tried = practicesToday(source, true).length;
  if (!takesItself || source.summary.practised.itself || tried >= triesADay) return [];
  return [practiceOf(source, fiveNumbers(source), true)];
}

function isRoundDue(source: DaySource): boolean {
  return source.settings.keepTimes && isCopyRoundDue(handsOf(source), source.today);
}

/** The hands that sit today, as far as it is known beforehand. */
function handsOf({ summary, device }: DaySource): Hands | null {
  return summary.hands.findLast((hands) => device === undefined || hands.device === device) ?? null;
}

function practicesToday({ sittings, today }: DaySource, takesItself: boolean) {
  return sittings.filter(
    ({ sat, rulings }) =>
      sat.day === today && sat.purpose === 'practice' && sat.takesItself === takesItself && !rulings.voided,
  );
}

function practiceOf(source: DaySource, prompts: readonly PromptId[], takesItself = false): Step {
  const plan: SittingPlan = {
    child: source.child,
    purpose: 'practice',
    of: null,
    set: null,
    seed: seedOf(source, 'practice'),
    prompts,
    clock: null,
    takesItself,
    onWrong: 'goOn',
    keepTimes: source.settings.keepTimes,
  };
  return { what: 'practice', plan };
}

function seedOf({ child, today }: DaySource, what: string): number {
  return seedFor(child, today, what, 0);
}

/** Numbers of one and two digits in turn, each different. */
function fiveNumbers(source: DaySource): readonly PromptId[] {
  const start = seedOf(source, 'practice') % 8;
  return Array.from({ length: practiceLength }, (_, place): PromptId => {
    const digit = 2 + ((start + place * 3) % 8);
    return `copy-${place % 2 === 0 ? digit : digit * 10 + ((digit + 3) % 10)}`;
  });
}
