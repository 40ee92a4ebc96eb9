import { fewestAtEase } from '../facts/fact-reading';
import type { Counted, FactSentence, Said } from './sentence';
import { about, capital, inWords, isOrAre, many, percent, slipsLeftOut } from './wording';

const custom = '“Within about 3 s” is a custom of the classroom; fast counting passes it too.';

/** So many right answers and none wrong make a fact known by themselves; fewer can be luck. */
const fewCanBeLuck = 8;

/** Sentences about facts in words. */
export function sayFacts(sentence: FactSentence): Said {
  switch (sentence.kind) {
    case 'quick': {
      const { counted, thinkS, atMost, sureness } = sentence;
      return {
        text: `Quick: ${rightOf(counted)}, thought of in ${about(thinkS)}${atMost ? ' at most' : ''}.`,
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
            text: sayUneven(counted),
            how: [
              countedLine(counted),
              `About ${percent(sureness)} sure that it is in between: neither known nor to learn. Newer answers weigh more.`,
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
      return sayNotEnough(sentence);
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

/** Where answers of both kinds decided, each kind is told, so that what hurry does is not laid on the fact. */
function sayUneven(counted: Counted): string {
  const { right, of, ofAtEase, rightAtEase } = counted;
  const ofWith = of - ofAtEase;
  if (ofAtEase === 0 || ofWith === 0)
    return `Uneven: ${rightOf(counted)}; sometimes it comes, sometimes it doesn’t.`;
  const rightWith = right - rightAtEase;
  return rightAtEase === ofAtEase && ofAtEase >= fewestAtEase
    ? `Right without the clock, ${rightAtEase} of ${ofAtEase}; uneven with it, ${rightWith} of ${ofWith} right.`
    : `Uneven: ${right} of ${of} right, ${rightAtEase} of ${ofAtEase} without the clock, ${rightWith} of ${ofWith} with it.`;
}

function sayNotEnough({ counted, why, isKnown }: Extract<FactSentence, { kind: 'notEnough' }>): Said {
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
            text: isKnown
              ? `Right every time, ${right} of ${of}${atEase(counted)}; not yet clear whether quick or slow.`
              : `Right so far: ${rightOf(counted)}, not yet enough to be sure.`,
            how: [
              known,
              isKnown
                ? `Its times lie near 3 s, or differ too much. ${custom}`
                : of < fewCanBeLuck
                  ? 'So few can still be luck with a fact that is not quite known.'
                  : 'Other facts of its set, or its turn-around, go wrong often enough that this may still be luck.',
            ],
          }
        : {
            text: `Can’t tell yet: ${rightOf(counted)}, between ${right >= 0.6 * of ? 'known and uneven' : 'uneven and to learn'}.`,
            how: [
              known,
              'The answers don’t settle on one word yet; more of them may. Newer answers weigh more.',
            ],
          };
  }
}

type SetFacts = Extract<FactSentence, { kind: 'setFacts' }>;

function saySetFacts(sentence: SetFacts): Said {
  const { scope, facts, quick, slow, uneven, toLearn, soFar, fewAnswers, oneDay, hurried } = sentence;
  const { unevenWithClock } = sentence;
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
        'Known: right so often that, luck allowed for, it comes more than 7 times in 10; 12 of 15 right is not yet enough for that. Quickly: in under about 3 s of thinking.',
        'Right so far: never wrong, but not yet enough to be sure, or to tell quick from slow.',
      ],
    };
  }
  const untold = facts - quick - slow - uneven - toLearn - soFar - fewAnswers - oneDay;
  const parts = [
    [quick, 'quick and right'],
    [slow, 'right but slow'],
    [
      uneven,
      `uneven${unevenWithClock === 0 ? '' : ` (${unevenWithClock === uneven ? 'all' : inWords(unevenWithClock)} with the clock only)`}`,
    ],
    [toLearn, 'to learn'],
    [soFar, 'right so far but not yet sure'],
    [fewAnswers, 'with too few answers'],
    [oneDay, 'with answers of one day only'],
    [untold, 'without a clear word yet'],
  ] as const;
  const told = parts.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
  return {
    text:
      facts === 0
        ? 'No fact has been answered yet.'
        : `Of ${many(facts, 'fact', 'facts')}: ${told.join(', ')}.`,
    how: [
      'Each fact by the child’s own answers on sheets and extra rows. What you called a slip is left out; what you accepted counts as right.',
      'Facts with 0 or 1, or with the same number twice, are easier or harder for other reasons: they are counted apart, below.',
    ],
  };
}

function rightOf(counted: Counted): string {
  return `${counted.right} of ${counted.of} right${atEase(counted)}`;
}

/** Where answers with the clock don’t speak, that is said. */
function atEase({ withoutClock }: Counted): string {
  return withoutClock ? ' without the clock' : '';
}

/** Which answers were counted, and what the parent’s rulings did to them. */
function countedLine({ of, all, withoutClock, accepted, slips }: Counted): string {
  const left = all - slips - of;
  const which = withoutClock
    ? `This rests on ${many(of, 'answer', 'answers')} without the clock${left > 0 ? `; ${inWords(left)} more, with the clock or long ago, ${isOrAre(left)} left out` : ''}.`
    : left > 0
      ? `This rests on the newest ${many(of, 'answer', 'answers')} of ${all}.`
      : `This rests on ${of === 1 ? 'the one answer' : `all ${many(of, 'answer', 'answers')}`} of the child’s own.`;
  const right =
    accepted > 0 ? ` ${capital(inWords(accepted))} of them ${isOrAre(accepted)} right by your ruling.` : '';
  return `${which}${right}${slipsLeftOut(slips)}`;
}

function chance(sureness: number, that: string): string {
  return `The chance that ${that} is about ${percent(sureness)}; newer answers weigh more.`;
}
