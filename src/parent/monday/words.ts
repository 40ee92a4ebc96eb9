import type { FactId } from '../../core/fact/fact';
import { promptText } from '../marking/words';
import { longDay } from '../parts/when';
import { count, listed } from '../words';

export const mondayWords = {
  title: 'What to teach on Monday',
  titleFor: (day: string) => `What to teach on ${longDay(day)}`,
  back: 'Back to Today',
  print: 'Print',
  lead: 'From the plan as it stands now; what is sat until then can still change it. Nothing here has to be done: the cards teach the same facts.',
  reading: 'Reading the plan …',
  noSet: 'No set is chosen, so there is nothing to teach.',
  set: (name: string) => `At “${name}”.`,
  fresh: (many: number) => `New in the cards: ${count(many, 'fact', 'facts')}`,
  freshAfter: (many: number) => `New in the cards on the day after: ${count(many, 'fact', 'facts')}`,
  freshWhy:
    'The next of the set that were not right at the first try, those that did not stay last time before the others.',
  firstTry: (many: number) =>
    `The day begins with a first try of ${count(many, 'fact', 'facts')}, before any teaching. Teach nothing of them beforehand: it shows what is there already.`,
  lookBack:
    'The sheet is a look-back on the kept sets. On that day nothing new is taught before it, and no help is given.',
  nothingNew: 'Nothing new: every fact of the set is there. It is practised, not taught.',
  cardsOff: 'Card rounds are turned off, so the plan names no new facts.',
  how: { fact: 'Fact', line: 'A way to it', work: 'Written out' },
  none: 'learn it as it stands',
  own: 'your own line',
  missed: 'Missed in the last seven days',
  missedNone: 'Nothing was missed and is still open.',
  missedWhy: 'Wrong or skipped on a sheet or an extra row, and not right at its last answer.',
  missedFact: (fact: FactId, times: number) =>
    times === 1
      ? promptText(fact)
      : `${promptText(fact)} (${times === 2 ? 'twice' : count(times, 'time', 'times')})`,
  faded: 'Likeliest to have faded',
  fadedNone: 'Nothing has been left for as long as two weeks.',
  fadedWhy: 'Not right at first try for two weeks or longer, the longest forgotten first.',
  fadedFact: (fact: FactId, days: number) => `${promptText(fact)} (${days} days)`,
  list: (facts: readonly string[]) => `${listed(facts)}.`,
} as const;
