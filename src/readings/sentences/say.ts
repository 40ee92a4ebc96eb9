import { sayFacts } from './say-facts';
import { sayOverTime } from './say-over-time';
import { saySheet } from './say-sheet';
import type { FactSentence, OverTimeSentence, Said, Sentence } from './sentence';
import { unbroken } from './wording';

/** Where each kind of sentence is put into words; the list of all kinds. */
export const sentenceKinds = {
  byBell: 'sheet',
  atEase: 'sheet',
  notCounted: 'sheet',
  rows: 'sheet',
  notKnown: 'sheet',
  new: 'sheet',
  rushedWrongQuicker: 'sheet',
  rushedThanUsual: 'sheet',
  rushedUnread: 'sheet',
  flusteredSlower: 'sheet',
  flusteredLessRight: 'sheet',
  flusteredBoth: 'sheet',
  slowHands: 'sheet',
  checking: 'sheet',
  fine: 'sheet',
  tooFew: 'sheet',
  nothingStandsOut: 'sheet',
  interrupted: 'sheet',
  noTimes: 'sheet',
  pauses: 'sheet',
  quick: 'facts',
  slow: 'facts',
  uneven: 'facts',
  toLearn: 'facts',
  notEnough: 'facts',
  setFacts: 'facts',
  errorLift: 'facts',
  ready: 'overTime',
  notReady: 'overTime',
  timeIt: 'overTime',
  timedTooSoon: 'overTime',
  clockTimes: 'overTime',
  clockAccuracy: 'overTime',
  clockNoClaim: 'overTime',
  trialDone: 'overTime',
  trialOpen: 'overTime',
  trend: 'overTime',
  noTrend: 'overTime',
  keypad: 'overTime',
  noHandTime: 'overTime',
} as const satisfies Readonly<Record<Sentence['kind'], 'sheet' | 'facts' | 'overTime'>>;

/** A sentence in plain words; `who` is the child's name. */
export function say(sentence: Sentence, who: string): Said {
  const { text, how } = inPlainWords(sentence, who);
  return { text: unbroken(text), how: [unbroken(how[0]), unbroken(how[1])] };
}

function inPlainWords(sentence: Sentence, who: string): Said {
  if (isFact(sentence)) return sayFacts(sentence);
  return isOverTime(sentence) ? sayOverTime(sentence, who) : saySheet(sentence, who);
}

function isFact(sentence: Sentence): sentence is FactSentence {
  return sentenceKinds[sentence.kind] === 'facts';
}

function isOverTime(sentence: Sentence): sentence is OverTimeSentence {
  return sentenceKinds[sentence.kind] === 'overTime';
}
