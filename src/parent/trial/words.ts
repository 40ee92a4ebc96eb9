import type { TrialPlan } from '../../readings/clock-trial/trial';

export const trialWords = {
  title: 'A clock trial',
  what: (name: string) =>
    `Does the clock itself make a difference to ${name}? Days that were picked by hand can’t answer that: the clock may have been on when ${name} was fresher, or knew more. In a trial chance decides which of the coming school days have the clock, seen as a thread drawn out along the screen, and which have none. At its end the same facts are compared on both kinds of days.`,
  settled:
    'What will be compared is settled now: the time from the card to the first key, on facts met on days of both kinds. How many were right is told beside it, but the trial does not decide by it.',
  days: 'How many school days',
  plans: {
    eight: '8 days',
    ten: '10 days',
    twelveInPairs: '12 days, in pairs: of each two days running one has the clock',
  } satisfies Record<TrialPlan, string>,
  /** How seldom the clearest result comes by luck alone. */
  reachable: (times: number) =>
    `The clearest result possible would come up by luck about ${times === 1 ? 'once' : `${times} times`} in 100.`,
  weaker: 'Most trials end with something less clear than that, and may well end with nothing to say.',
  rules: [
    'A day without a sheet is no day of the trial: the next one takes its place.',
    'If you change a day yourself, yours holds; that day of the trial then comes again.',
    'Starting another set ends the trial.',
  ],
  needsAccurate: (right: number, of: number) =>
    `It needs a set that is accurate, or the clock would test what is not known yet: at least 45 of the last 50 answers to it without the clock right. ${of < 50 ? `There are ${of} so far, ${right} of them right.` : `Now it is ${right} of 50.`}`,
  noSet: 'It needs a set to learn from.',
  noTimes: 'It needs times, and they are not kept for this child.',
  start: 'Draw the days and begin',
  again: 'Another trial',
  orderKept: 'Which days have the clock is not shown beforehand, so that nobody waits for them.',
  stop: 'Stop the trial',
  stopHint: 'Stopped early it can only be described, not tested.',
  goOn: 'Go on with it',
} as const;
