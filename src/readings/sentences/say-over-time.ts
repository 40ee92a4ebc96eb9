import type { NoClaim } from '../clock-effect/claim';
import type { Interval } from '../statistics/interval';
import type { OverTimeSentence, Said, TrendOf } from './sentence';
import { capital, listed, many } from './wording';

/** Sentences over time in words. `who` is the child's name. */
export function sayOverTime(sentence: OverTimeSentence, who: string): Said {
  switch (sentence.kind) {
    case 'ready': {
      const { quick, facts, lastRight, lastOf } = sentence;
      return {
        text: `${who} looks ready to move on: ${quick} of ${facts} facts are quick and right.`,
        how: [
          `Of the last ${lastOf} answers without the clock ${lastRight} were right, no fact is still to learn, and at most one in ten is not quick.`,
          'A proposal: you decide. The facts stay on the sheets from time to time.',
        ],
      };
    }
    case 'notReady': {
      const { quick, facts, heldBack, isAccurate } = sentence;
      const back = heldBack.length === 0 ? '' : ` Still holding it back: ${listed(heldBack)}.`;
      return {
        text: `Not yet ready to move on: ${quick} of ${facts} facts are quick and right.${back}`,
        how: [
          isAccurate
            ? 'The set is accurate; it is the facts named that are not quick yet.'
            : 'Ready takes 45 right of the last 50 answers without the clock, and nine facts in ten quick.',
          'A proposal: you decide.',
        ],
      };
    }
    case 'timeIt': {
      const { lastRight, lastOf } = sentence;
      return {
        text: 'This set is accurate. You may turn the clock on; it is yours to leave off.',
        how: [
          `Of the last ${lastOf} answers without the clock ${lastRight} were right.`,
          'Only what is already accurate is worth timing. Whether timed practice makes children anxious is disputed; some dislike it.',
        ],
      };
    }
    case 'timedTooSoon': {
      const { lastRight, lastOf } = sentence;
      return {
        text: 'The clock is on, but the set is not accurate yet: better leave it off for now.',
        how: [
          `Accurate is 45 right of the last 50 answers without the clock; so far there are ${lastRight} of ${lastOf}.`,
          'With the clock on, a fact that is not known yet and one that only needs longer look alike.',
        ],
      };
    }
    case 'clockTimes': {
      const { claim, ratio, interval, facts, days } = sentence;
      return {
        text: `On days with the clock ${who} begins an answer ${claim === 'faster' ? 'sooner' : 'later'}: it takes ${changeOf(ratio)}.`,
        how: [
          `${facts} facts on ${days} days with the clock, each beside a day without it near by${within(interval)}.`,
          onlyDrawn,
        ],
      };
    }
    case 'clockAccuracy': {
      const { claim, worse, better, facts, isSooner } = sentence;
      const less = claim === 'worse' ? 'less' : 'more';
      return {
        text: `On days with the clock ${who} is ${less} often right on the same facts.${isSooner && claim === 'worse' ? ' Sooner and less often right together look like hurry: try the clock off, or ask aloud.' : ''}`,
        how: [
          `Of ${facts} facts ${worse} were right less often with the clock, ${better} more often, the others as often.`,
          onlyDrawn,
        ],
      };
    }
    case 'clockNoClaim': {
      const { time, accuracy, facts, daysWith, daysWithout } = sentence;
      const why =
        noClaim[time === 'notBeyondChance' ? time : accuracy === 'notBeyondChance' ? accuracy : time];
      return {
        text:
          facts === 0
            ? 'No fact was met on days of both kinds yet, so days with the clock and days without can’t be set side by side.'
            : `Nothing can be said of days with the clock against days without: ${why}.`,
        how: [
          facts === 0
            ? 'Only the last twelve weeks are looked at, and days at most four weeks apart.'
            : `${capital(many(facts, 'fact', 'facts'))} could be set side by side, from ${many(daysWith, 'day', 'days')} with the clock and ${many(daysWithout, 'day', 'days')} without.`,
          'It takes six facts and six days at least, and a difference beyond chance.',
        ],
      };
    }
    case 'trialDone': {
      const { ratio, p, days, facts } = sentence;
      const isBeyond = p <= 0.05;
      const size = `${Math.abs(Math.round((ratio - 1) * 100))} in 100 ${ratio >= 1 ? 'longer' : 'shorter'}`;
      return {
        text: isBeyond
          ? `Most likely the clock makes a difference. With it seen, ${who} takes ${size} to begin an answer.`
          : `The trial shows no difference beyond chance (with the clock seen, times were ${size}).`,
        how: [
          `${days} days in an order drawn by lot, ${facts} facts met on both kinds. If the clock made no difference, luck alone would show this much about once in ${Math.max(1, Math.round(1 / p))}.`,
          'It holds for this child, these facts and these weeks.',
        ],
      };
    }
    case 'trialOpen': {
      const { days, left, isStopped } = sentence;
      return {
        text: isStopped
          ? `The trial was stopped after ${many(days, 'day', 'days')}; a trial cut short proves nothing.`
          : `The trial goes on: ${many(days, 'day', 'days')} sat, ${left} to come.`,
        how: [
          'Only a trial sat to its end is weighed: to look at it before and stop would make chance look like a finding.',
          'A missed day moves the rest on.',
        ],
      };
    }
    case 'trend': {
      const { of, withClock, perWeek, interval, sittings } = sentence;
      const isFlat = interval.low <= 0 && interval.high >= 0;
      const way = perWeek > 0 ? 'more' : 'less';
      return {
        text: isFlat
          ? `${capital(trends[of])}${onDays(withClock)}: ${drift(size(of, perWeek), perWeek)}.`
          : `${capital(trends[of])}${onDays(withClock)}: ${size(of, perWeek)} ${way} a week.`,
        how: [
          `From ${sittings} sittings under the same conditions; the true change most likely lies between ${size(of, interval.low, true)} and ${size(of, interval.high, true)} a week.`,
          'The line breaks where set, allowance, length, device or way of entry change: across such breaks numbers can’t be compared.',
        ],
      };
    }
    case 'noTrend': {
      const { of, withClock, why } = sentence;
      return {
        text:
          why === 'tooFew'
            ? `${capital(trends[of])}${onDays(withClock)}: too few sittings under the same conditions for a trend.`
            : `${capital(trends[of])}${onDays(withClock)}: as high as it can go on many days, so no trend is drawn.`,
        how: [
          'A trend takes six sittings with nothing changed between them.',
          'At the ceiling a line would say less than the counts do.',
        ],
      };
    }
    case 'keypad': {
      const { mostAnswers, allowanceS, bands, restoringS } = sentence;
      const more = restoringS === null ? '' : ` ${restoringS} s would bring all within reach.`;
      return {
        text: `${capital(many(bands, 'band is', 'bands are'))} out of reach by keying alone: ${who} can enter at most ${mostAnswers} answers in ${allowanceS} s.${more}`,
        how: [
          'From the numbers copied without any arithmetic: time to the first key, between keys and to the next card.',
          'The limits come from pencil and paper and are yours to change; nothing changes by itself.',
        ],
      };
    }
    case 'noHandTime':
      return {
        text: `How fast ${who} keys a number without any thinking is not known yet, so true think times may be shorter than shown.`,
        how: [
          'It takes ten copied numbers each of one and two digits, on this device and in this way of entry.',
          'Without it the time for finding the keys counts as thinking.',
        ],
      };
  }
}

const onlyDrawn =
  'It goes with the days with the clock. Whether the clock makes the difference only days drawn by lot can tell.';

const noClaim: Readonly<Record<NoClaim, string>> = {
  tooFewFacts: 'too few facts were met on both',
  tooFewDays: 'there are too few days',
  notBeyondChance: 'no difference beyond chance',
  notOnMostDays: 'the days don’t agree among themselves',
  practice: 'practice alone could explain the difference',
};

const trends: Readonly<Record<TrendOf, string>> = {
  facts: 'facts right a minute',
  digits: 'digits right a minute',
  count: 'facts right by the bell',
  think: 'think time',
};

function changeOf(ratio: number): string {
  return `${Math.abs(Math.round((ratio - 1) * 100))} in 100 ${ratio >= 1 ? 'longer' : 'less time'}`;
}

/** Where the change may as well be none, what the line on the chart shows is said, and that it may be chance. */
function drift(change: string, perWeek: number): string {
  if (Number.parseFloat(change) === 0) return 'about level';
  return `${perWeek > 0 ? 'rises' : 'falls'} by about ${change} a week, but that may be chance`;
}

function onDays(withClock: boolean): string {
  return withClock ? ' on days with the clock' : ' on days without the clock';
}

function size(of: TrendOf, perWeek: number, signed = false): string {
  const rounded = (Math.round(Math.abs(perWeek) * 10) / 10).toString() + (of === 'think' ? ' s' : '');
  return signed && perWeek < 0 ? `−${rounded}` : rounded;
}

function within(interval: Interval | null): string {
  return interval === null
    ? ''
    : `; it lies between ${interval.low.toFixed(2)} and ${interval.high.toFixed(2)} times`;
}
