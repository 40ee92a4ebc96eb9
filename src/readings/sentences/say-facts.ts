import type { NotEnough } from '../facts/fact-reading';
import type { FactSentence, Said } from './sentence';
import { about, capital, many, percent, sure } from './wording';

const custom = '“Within about 3 s” is a custom of the classroom; fast counting passes it too.';
const weighed = 'Newer answers weigh more; other facts of the set can make this less sure, never surer.';

/** Sentences about facts in words. */
export function sayFacts(sentence: FactSentence): Said {
  switch (sentence.kind) {
    case 'quick': {
      const { right, of, thinkS, atMost, sureness } = sentence;
      const most = atMost ? ' at most' : '';
      return {
        text: `Quick: ${right} of ${of} right, ${about(thinkS)}${most}.`,
        how: [`We are ${sure(sureness)} (${percent(sureness)}). ${weighed}`, custom],
      };
    }
    case 'slow': {
      const { right, of, thinkS, sureness } = sentence;
      return {
        text: `Slow: ${right} of ${of} right, but ${about(thinkS)} each.`,
        how: [
          `We are ${sure(sureness)} (${percent(sureness)}). ${weighed}`,
          `${custom} Slow and right may be counting, or checking what is known.`,
        ],
      };
    }
    case 'uneven': {
      const { right, of, sureness } = sentence;
      return {
        text: `Uneven: ${right} of ${of} right: sometimes yes, sometimes no, or at one time quickly and at another slowly.`,
        how: [
          `We are ${sure(sureness)} (${percent(sureness)}) that it is neither known nor wholly to learn.`,
          weighed,
        ],
      };
    }
    case 'toLearn': {
      const { right, of, sureness } = sentence;
      return {
        text: `To learn: ${right} of ${of} right.`,
        how: [`We are ${sure(sureness)} (${percent(sureness)}) that fewer than half come right.`, weighed],
      };
    }
    case 'notEnough': {
      const { answers, right, why } = sentence;
      return {
        text: `${why === 'fewAnswers' || why === 'oneDay' ? 'Too few answers yet' : 'Can’t tell yet'}: ${right} of ${answers} right.`,
        how: [
          why === 'notSure' && right === answers ? maybeLuck : notEnough[why],
          'Any word on a fact takes three answers of the child’s own on two days.',
        ],
      };
    }
    case 'setFacts': {
      const { facts, quick, slow, uneven, toLearn, tooFew } = sentence;
      const untold = facts - quick - slow - uneven - toLearn - tooFew;
      const parts = [
        [quick, 'quick and right'],
        [slow, 'right but slow'],
        [uneven, 'uneven'],
        [toLearn, 'to learn'],
        [tooFew, 'with too few answers yet'],
        [untold, 'of which nothing can be told yet'],
      ] as const;
      const told = parts.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
      return {
        text: facts === 0 ? 'No fact has been answered yet.' : `Of ${facts} facts: ${told.join(', ')}.`,
        how: [
          'Each fact by the child’s own answers on sheets and extra rows; what you called a slip is left out.',
          'Facts with 0 or 1, or with the same number twice, come in another way: they are counted apart, below.',
        ],
      };
    }
    case 'errorLift': {
      const { what, hits, of, expected, pMore } = sentence;
      const usual = Math.round(expected * 10) / 10;
      const beyond = pMore <= 0.01 ? 'more than chance would give' : 'no more than chance could give';
      return {
        text: `${capital(many(hits, 'wrong answer', 'wrong answers'))} of ${of}: ${what}; that is ${beyond}.`,
        how: [
          `Numbers given blindly, entered in the same way, would look like this about ${usual} times in ${of}.`,
          'What a wrong number looks like is a hint at how it came about, and no proof.',
        ],
      };
    }
  }
}

const maybeLuck =
  'All right so far, but luck could give so few to a fact that is not quite known, or they are too few to tell quick from slow.';

const notEnough: Readonly<Record<NotEnough, string>> = {
  fewAnswers: 'There are fewer than three answers.',
  oneDay: 'All answers are of one day.',
  notSure:
    'There are answers enough, but they don’t settle on one word, neither for how often right nor for how quick.',
  noTimes: 'It comes right, but without times quick and slow can’t be told apart.',
};
