import type { NoClaim } from '../clock-effect/claim';
import { isFlat } from '../rates/trend';
import type { OverTimeSentence, Said, TrendOf } from './sentence';
import { capital, listed, many, partBetween, partOf, shortDate } from './wording';

/** Sentences over time in words. `who` is the child's name. */
export function sayOverTime(sentence: OverTimeSentence, who: string): Said {
  switch (sentence.kind) {
    case 'ready': {
      const { quick, facts, lastRight, lastOf, lastDays, unevenWithClock, clock } = sentence;
      return {
        text: `${who} looks ready to move on: of the last ${lastOf} answers to this set without the clock${betweenDays(lastDays)} ${lastRight} were right.${nextSet(clock, who)}`,
        how: [
          `Every fact was right at the first try on three days, none is still to learn, and at least nine in ten, with the clock or without, look right in 7 of 10 or better and thought of in about 3 s.${unevenInAll(unevenWithClock)} Surely quick so far: ${quick} of ${facts}${quick < facts ? '; that need not hold it up' : ''}.`,
          `The ${lastOf} are from sheets, look-backs, first tries and extra rows; cards and corrections don’t count. Over time shows plain sheets alone. A proposal: you decide. The facts stay on the sheets from time to time, and no day with the clock is needed first.`,
        ],
      };
    }
    case 'notReady': {
      const { quick, facts, heldBack, isAccurate } = sentence;
      const back = heldBack.length === 0 ? '' : ` Still holding it back: ${listed(heldBack)}.`;
      return {
        text: `Not yet ready to move on: ${quick} of ${facts} facts are surely quick and right.${back}`,
        how: [
          isAccurate
            ? 'The set is accurate; the facts named are new still, or slow, uneven or to learn. New: not yet right at the first try on three days.'
            : 'Ready takes 45 right of the last 50 answers to the set without the clock, every fact right at the first try on three days, and nine facts in ten neither slow nor uneven.',
          'A proposal: you decide.',
        ],
      };
    }
    case 'timeIt': {
      const { lastRight, lastOf } = sentence;
      return {
        text: 'This set is accurate. You may turn the clock on; it is yours to leave off.',
        how: [
          `Of the last ${lastOf} answers to it without the clock ${lastRight} were right.`,
          'Only what is already accurate is worth timing. Whether timed practice makes children anxious is disputed; some dislike it.',
        ],
      };
    }
    case 'timedTooSoon': {
      const { lastRight, lastOf } = sentence;
      return {
        text: 'The clock is on, but the set is not accurate yet: better leave it off for now.',
        how: [
          `Accurate is 45 right of the last 50 answers to the set without the clock; so far there are ${lastRight} of ${lastOf}.`,
          'With the clock on, a fact that is not known yet and one that only needs longer look alike.',
        ],
      };
    }
    case 'clockTimes': {
      const { claim, ratio, interval, facts, days, rights } = sentence;
      return {
        text:
          claim === 'slower'
            ? `On days with the clock ${who} takes ${partOf(ratio)} longer to begin an answer${partBetween(interval)}.`
            : `On days with the clock ${who} begins an answer ${partOf(ratio)} sooner${partBetween(interval)}, ${soonerAnd[rights ?? 'same']}.`,
        how: [
          `${facts} facts on ${days} days with the clock, each beside a day without it near by.`,
          onlyDrawn,
        ],
      };
    }
    case 'clockAccuracy': {
      const { claim, worse, better, facts, time } = sentence;
      const less = claim === 'worse' ? 'less' : 'more';
      const isHurry = time === 'faster' && claim === 'worse';
      return {
        text: `On days with the clock ${who} is ${less} often right on the same facts.${isHurry ? ' Sooner and less often right together look like hurry: try the clock off, or ask aloud.' : ''}`,
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
      const size = `${partOf(ratio)} ${ratio >= 1 ? 'longer' : 'shorter'}`;
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
      const { of, withClock, perWeek, interval, sheets, isFirst } = sentence;
      const flat = isFlat(interval);
      const way = perWeek > 0 ? 'rising' : 'falling';
      return {
        text: `${trendName(of, withClock)}: ${flat ? 'neither clearly rising nor falling' : `${way}, by about ${size(of, perWeek)} a week`}.`,
        how: [
          `From ${sheets} sheets with nothing changed between them. What a week changes lies most likely between ${moreOrLess(of, interval.low)} and ${moreOrLess(of, interval.high)}${flat ? ', so it may as well be nothing, and no line is drawn for them' : ''}.${flat && !isFirst ? ' A line on the chart, if there is one, belongs to the sheets before.' : ''}`,
          comparable,
        ],
      };
    }
    case 'noTrend': {
      const { of, withClock, why, sheets, isFirst } = sentence;
      const since = isFirst ? 'so far' : 'since something changed';
      return {
        text:
          why === 'tooFew'
            ? `${trendName(of, withClock)}: ${many(sheets, 'sheet', 'sheets')} ${since}, too few to tell a rise or a fall.`
            : `${trendName(of, withClock)}: as high as it can go on many of ${sheets} sheets ${since}, so no line is drawn.`,
        how: [
          `It takes six sheets on different days with nothing changed between them.${isFirst ? '' : ' A line on the chart, if there is one, belongs to the sheets before the change.'}`,
          comparable,
        ],
      };
    }
    case 'keypad': {
      const { mostAnswers, allowanceS, bands, restoringS } = sentence;
      const more = restoringS === null ? '' : ` ${restoringS} s would bring all within reach.`;
      return {
        text: `${capital(many(bands, 'band is', 'bands are'))} out of reach by keying alone: ${who} can enter at most ${mostAnswers} answers in ${allowanceS} s.${more}`,
        how: [
          'From numbers copied without any arithmetic: time to the first key, between keys and to the next card.',
          'A band is where the count right by the bell falls. Its limits come from pencil and paper and are yours to change; nothing changes by itself.',
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

type Ready = Extract<OverTimeSentence, { kind: 'ready' }>;

/** Moving on says what becomes of the clock, so that nothing else on the page has to. */
function nextSet(clock: Ready['clock'], who: string): string {
  switch (clock) {
    case 'off':
      return '';
    case 'on':
      return ' The next set begins without the clock.';
    case 'lessRight':
      return ` Start the next set: that turns the clock off too. On days with it ${who} has been less often right.`;
    case 'slower':
      return ` Start the next set: that turns the clock off too. On days with it ${who} has taken longer.`;
    case 'drawn':
      return ' But the clock trial comes first: another set would end it.';
  }
}

/** The days between which the last answers were given. */
function betweenDays(days: Ready['lastDays']): string {
  return days === null ? '' : `, from ${shortDate(days[0])} to ${shortDate(days[1])},`;
}

/** Why a set may be done whose facts the grid calls uneven. */
function unevenInAll(facts: number): string {
  if (facts === 0) return '';
  return ` ${capital(many(facts, 'fact is', 'facts are'))} called uneven with answers with the clock counted in, which does not hold the set back.`;
}

const onlyDrawn =
  'It goes with the days with the clock. Whether the clock makes the difference only a clock trial can tell, its days drawn by lot.';

const comparable =
  'A change of set, time allowed, length, device or way of entry begins anew: numbers before it and after it can’t be compared. Look-backs and interrupted sheets are left out.';

/** Sooner alone is neither good nor bad. */
const soonerAnd: Readonly<Record<'worse' | 'better' | 'same', string>> = {
  worse: 'which alone is no gain',
  better: 'and is right more often as well',
  same: 'and is right no more and no less often, as far as can be told',
};

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

function trendName(of: TrendOf, withClock: boolean): string {
  return `${capital(trends[of])} on days ${withClock ? 'with' : 'without'} the clock`;
}

function size(of: TrendOf, perWeek: number): string {
  return (Math.round(Math.abs(perWeek) * 10) / 10).toString() + (of === 'think' ? ' s' : '');
}

function moreOrLess(of: TrendOf, perWeek: number): string {
  const change = size(of, perWeek);
  if (Number.parseFloat(change) === 0) return 'nothing';
  if (of === 'think') return `${change} ${perWeek > 0 ? 'more' : 'less'}`;
  const [one, more] = of === 'digits' ? ['digit', 'digits'] : ['fact', 'facts'];
  return `${change} ${change === '1' ? one : more} ${perWeek > 0 ? 'more' : 'fewer'}`;
}
