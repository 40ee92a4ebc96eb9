import type { FactReading } from '../facts/fact-reading';
import type { Counted, FactSentence, Said } from './sentence';
import { about, capital, inWords, isOrAre, many, percent, slipsLeftOut } from './wording';

const custom = '“Within about 3 s” is a custom of the classroom; fast counting passes it too.';

/** Sentences about facts in words. */
export function sayFacts(sentence: FactSentence): Said {
  switch (sentence.kind) {
    case 'quick': {
      const { counted, thinkS, atMost, sureness } = sentence;
      return {
        text: `Quick: ${rightOf(counted)}, ${about(thinkS)}${atMost ? ' at most' : ''}.`,
        how: [countedLine(counted), `${chance(sureness, 'it is known')} ${custom}`],
      };
    }
    case 'slow': {
      const { counted, thinkS, sureness } = sentence;
      return {
        text: `Slow: ${rightOf(counted)}, but ${about(thinkS)} each.`,
        how: [
          countedLine(counted),
          `${chance(sureness, 'it is known')} Slow and right may be counting, or checking what is known. ${custom}`,
        ],
      };
    }
    case 'uneven': {
      const { counted, sureness, unevenIn } = sentence;
      return unevenIn === 'pace'
        ? {
            text: `Uneven: ${rightOf(counted)}, at one time quickly and at another slowly.`,
            how: [countedLine(counted), `It comes right, but its times lie on both sides of 3 s. ${custom}`],
          }
        : {
            text: `Uneven: ${rightOf(counted)}; sometimes it comes, sometimes it doesn’t.`,
            how: [
              countedLine(counted),
              chance(sureness, 'it is neither well known nor wholly to be learned'),
            ],
          };
    }
    case 'toLearn': {
      const { counted, sureness } = sentence;
      return {
        text: `To learn: ${rightOf(counted)}.`,
        how: [countedLine(counted), chance(sureness, 'fewer than half come right')],
      };
    }
    case 'notEnough':
      return sayNotEnough(sentence.counted, sentence.why);
    case 'setFacts':
      return saySetFacts(sentence);
    case 'errorLift': {
      const { what, hits, of, expected, pMore } = sentence;
      const usual = Math.round(expected * 10) / 10;
      const beyond =
        pMore <= 0.01 ? 'more than blind guessing gives' : 'no more than blind guessing can give';
      return {
        text: `Of ${many(of, 'wrong answer', 'wrong answers')} ${inWords(hits)} ${isOrAre(hits)} ${what}: ${beyond}.`,
        how: [
          `Numbers given blindly, entered in the same way, would look like this about ${usual} times in ${of}.`,
          'What a wrong number looks like is a hint at how it came about, and no proof.',
        ],
      };
    }
  }
}

function sayNotEnough(counted: Counted, why: NonNullable<FactReading['notEnough']>): Said {
  const { right, of } = counted;
  const rule = 'A word on a fact takes three answers of the child’s own, on two days or more.';
  const known = countedLine(counted);
  switch (why) {
    case 'fewAnswers':
      return {
        text: `Too few answers yet: ${of === 0 ? 'none that counts' : rightOf(counted)}.`,
        how: [known, rule],
      };
    case 'oneDay':
      return { text: `Too few days yet: ${rightOf(counted)}, all on one day.`, how: [known, rule] };
    case 'noTimes':
      return {
        text: `Comes right: ${rightOf(counted)}. Without times quick and slow can’t be told apart.`,
        how: [known, 'You turned the keeping of times off, or it was off when these answers were given.'],
      };
    case 'notSure':
      return right === of
        ? {
            text: `Right so far: ${rightOf(counted)}, too few to be sure.`,
            how: [
              known,
              'So few can be luck with a fact that is not quite known, or are too few to tell quick from slow.',
            ],
          }
        : {
            text: `Can’t tell yet: ${rightOf(counted)}, between ${right >= 0.6 * of ? 'known and uneven' : 'uneven and to learn'}.`,
            how: [known, 'The answers don’t settle on one word; some more will.'],
          };
  }
}

type SetFacts = Extract<FactSentence, { kind: 'setFacts' }>;

function saySetFacts(sentence: SetFacts): Said {
  const { scope, facts, quick, slow, uneven, toLearn, soFar, fewAnswers, oneDay, hurried } = sentence;
  if (scope === 'all') {
    const met = `${many(facts, 'fact', 'facts')} met so far`;
    const known =
      quick + slow === 0
        ? `Of ${met} none is surely known yet`
        : `In all ${quick + slow} of ${met} ${isOrAre(quick + slow)} known, ${slow === 0 ? 'all' : quick} of them quickly`;
    const more = soFar > 0 ? `; ${inWords(soFar)} more ${isOrAre(soFar)} right so far` : '';
    const hurry = hurried
      ? ' The last sheet with the clock was rushed, so more may be known than shows: ask a few aloud.'
      : '';
    return {
      text: `${known}${more}.${hurry}`,
      how: [
        'Known: the answers make it very likely that more than 7 in 10 come right. Quickly: in under about 3 s of thinking.',
        'Right so far: never wrong, but with too few answers to be sure.',
      ],
    };
  }
  const untold = facts - quick - slow - uneven - toLearn - soFar - fewAnswers - oneDay;
  const parts = [
    [quick, 'quick and right'],
    [slow, 'right but slow'],
    [uneven, 'uneven'],
    [toLearn, 'to learn'],
    [soFar, 'right so far but too few answers to be sure'],
    [fewAnswers, 'with too few answers'],
    [oneDay, 'with answers of one day only'],
    [untold, 'not clearly one or the other'],
  ] as const;
  const told = parts.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
  return {
    text:
      facts === 0
        ? 'No fact has been answered yet.'
        : `Of ${many(facts, 'fact', 'facts')}: ${told.join(', ')}.`,
    how: [
      'Each fact by the child’s own answers on sheets and extra rows. What you called a slip is left out; what you accepted counts as right.',
      'Facts with 0 or 1, or with the same number twice, come in another way: they are counted apart, below.',
    ],
  };
}

/** Where answers with the clock don’t speak, that is said. */
function rightOf({ right, of, withoutClock }: Counted): string {
  return `${right} of ${of} right${withoutClock ? ' without the clock' : ''}`;
}

/** Which answers were counted, and what the parent’s rulings did to them. */
function countedLine({ of, all, withoutClock, accepted, slips }: Counted): string {
  const left = all - slips - of;
  const which = withoutClock
    ? `${capital(many(of, 'answer', 'answers'))} without the clock decided${left > 0 ? `; ${inWords(left)} more, with the clock or long ago, did not` : ''}.`
    : left > 0
      ? `The newest ${many(of, 'answer', 'answers')} of ${all} decided.`
      : `All ${many(of, 'answer', 'answers')} of the child’s own decided.`;
  const right =
    accepted > 0 ? ` ${capital(inWords(accepted))} of them ${isOrAre(accepted)} right by your ruling.` : '';
  return `${which}${right}${slipsLeftOut(slips)}`;
}

function chance(sureness: number, that: string): string {
  return `The chance that ${that} is about ${percent(sureness)}; newer answers weigh more.`;
}
