import type { Flustered } from '../sitting-verdict/verdict';
import { sayRushed } from './say-rushed';
import type { Said, SheetSentence } from './sentence';
import { about, capital, inWords, isOrAre, listed, many, partOf } from './wording';

/** One sheet's sentences in words. `who` is the child's name. */
export function saySheet(sentence: SheetSentence, who: string): Said {
  switch (sentence.kind) {
    case 'byBell': {
      const { right, reached, length } = sentence;
      const far = reached === length ? `${who} reached all ${length}` : `${who} reached ${reached}`;
      return {
        text: `${right} right by the bell; ${far}.`,
        how: [
          `Counted: right answers given by the bell, of ${length} on the sheet. A card still open then may be finished, and does not count.${ruledOn(sentence)}`,
          reached === length
            ? 'What came after the bell is kept and counts for its fact.'
            : 'What was not reached is not wrong, and no sign of anything.',
        ],
      };
    }
    case 'atEase': {
      const { right, reached, length } = sentence;
      const far = reached === length ? '' : `; ${who} reached ${reached}`;
      return {
        text: `${right} of ${length} right, without the clock${far}.`,
        how: [
          `Counted: right answers; where a card was answered twice, the last one.${ruledOn(sentence)}`,
          'There was no time limit, so the count falls into no band.',
        ],
      };
    }
    case 'notCounted':
      return {
        text:
          sentence.why === 'voided'
            ? 'You ruled that this sheet does not count, so nothing is read from it.'
            : 'You ruled that somebody helped, so nothing is read from it.',
        how: ['Your ruling stands in Marking, under “Decided”.', 'Taken back, the sheet is read again.'],
      };
    case 'rows': {
      const { right, of, thinkS } = sentence;
      const rows = of > 5 ? 'rows' : 'row';
      const all =
        of === 1
          ? right === 1
            ? 'was right'
            : 'was not right'
          : right === of
            ? 'were all right'
            : `came to ${inWords(right)} right`;
      const time = thinkS === null || right === 0 ? '' : `, ${about(thinkS)} each`;
      return {
        text: `The ${many(of, 'answer', 'answers')} of the extra ${rows}, without the clock, ${all}${time}.`,
        how: [
          'The extra rows: facts missed or not reached on the sheet, then the slowest.',
          'They were picked because they went badly, so they are likely to go better now: described, and never weighed against the sheet.',
        ],
      };
    }
    case 'notKnown': {
      const { facts, before } = sentence.verdict;
      return {
        text: `${capital(listed(facts))} ${facts.length === 1 ? 'does' : 'do'} not come yet, with the clock or without it: of ${before.of} answers without it in the last weeks ${before.right} were right, ${before.quick} of them quickly.`,
        how: [
          `${capital(many(facts.length, 'fact', 'facts'))} missed or long in coming on this sheet, and no better on days without the clock before it.`,
          '“Quickly” is under about 3 s of thinking: a custom of the classroom, not a limit found by research.',
        ],
      };
    }
    case 'new': {
      const { facts, troubled } = sentence.verdict;
      const whole =
        facts.length === troubled
          ? wholeOf(troubled)
          : `${capital(inWords(facts.length))} of the ${inWords(troubled)} facts`;
      return {
        text: `${whole} that went wrong or took long ${troubled === 1 ? 'is' : 'are'} still new here: ${listed(facts)}.`,
        how: [
          'New: met here on fewer than six days, and right at the first try on fewer than three of them, whatever was known before.',
          'New facts need more days.',
        ],
      };
    }
    case 'rushedWrongQuicker':
    case 'rushedThanUsual':
    case 'rushedUnread':
      return sayRushed(sentence, who);
    case 'flusteredSlower':
      return {
        text: `Over many days, not on this sheet alone: on days with the clock ${who} takes ${longer(sentence.verdict)} over the same facts.`,
        how: [daysSide(sentence.verdict), clockDoubt],
      };
    case 'flusteredLessRight':
      return {
        text: `Over many days, not on this sheet alone: on days with the clock ${who} is less often right on the same facts: ${shares(sentence.verdict)}.`,
        how: [daysSide(sentence.verdict), clockDoubt],
      };
    case 'flusteredBoth':
      return {
        text: `Over many days, not on this sheet alone: on days with the clock ${who} takes ${longer(sentence.verdict)} over the same facts and is less often right: ${shares(sentence.verdict)}.`,
        how: [daysSide(sentence.verdict), clockDoubt],
      };
    case 'slowHands': {
      const { mostAnswers, needed, keyedShare, restoringS } = sentence.verdict;
      const more =
        restoringS === null || !sentence.advises ? '' : ` ${restoringS} s would bring every band into reach.`;
      return {
        text: `The answers come, but the keys take about ${Math.round(keyedShare * 10)} tenths of the time: ${needed} right by the bell, where the two top bands begin, are out of reach at this pace.${more}`,
        how: [
          `From the numbers ${who} copied: with nothing to think, at most ${mostAnswers} answers can be entered in the time allowed.`,
          'The bands come from pencil and paper. Keys are another thing, and the allowance is yours to change.',
        ],
      };
    }
    case 'checking': {
      const { right, of, thinkS, quickBefore, ofBefore } = sentence.verdict;
      return {
        text: `${right} of ${of} right, ${about(thinkS)} each, though the same facts have come quickly before: ${who} may know them and be checking.`,
        how: [
          `Of ${ofBefore} earlier answers to them ${quickBefore} were right in under about 3 s. Facts still new, and answers you called slips, are left out.`,
          'A slow child without errors may know and check. Counting again looks the same from outside: ask.',
        ],
      };
    }
    case 'fine':
      return {
        text: `Nothing to look into: ${fineCount(sentence)}, and nothing stands out beyond chance.`,
        how: [
          sentence.timed
            ? 'From the second band up no reason is looked for in the count; hurry, and days with the clock, are looked at all the same.'
            : `At nine in ten no reason is looked for.${nineInTenWithout(sentence.slips)}`,
          'This is about this sheet alone. What shows only over many days stands under Over time.',
        ],
      };
    case 'tooFew':
      return {
        text: `${tooFewOf(sentence.wrong)} to say why; the next sheets may tell.`,
        how: sentence.timed
          ? [
              'To tell whether the clock has to do with it takes six days with it and days without it, on the same facts.',
              'No other reason stands out on this sheet by itself.',
            ]
          : [
              'No reason stands out on this sheet by itself.',
              'More answers to the same facts will show which of them are known.',
            ],
      };
    case 'nothingStandsOut':
      return {
        text: 'Why, can’t be told from these answers.',
        how: [
          'Looked for: facts not known or still new, hurry, slow keys, checking, a difference on days with the clock.',
          'None stood out beyond chance. There is more to a child’s day than these times: ask.',
        ],
      };
    case 'interrupted':
      return {
        text: 'The sheet was interrupted, so its count says little.',
        how: [
          sentence.whole
            ? 'The screen was left for a while, so its time can’t be set beside others.'
            : 'The screen was left, or the sheet stopped, before its end.',
          'Every answer given is kept and counts for its fact.',
        ],
      };
    case 'noTimes':
      return {
        text: 'There are no times, so there is little to say why.',
        how: [
          'It was done on paper, or you turned the keeping of times off for this child.',
          'Right and wrong still count for each fact.',
        ],
      };
    case 'pauses':
      return {
        text: `Where a second digit followed, it came late ${sentence.times} of ${sentence.of} times. Nothing needs doing about it.`,
        how: [
          `Late: after a gap longer than nine in ten of ${who}’s own when a number is only copied. So one in ten counts as late even where nothing is the matter.`,
          'Thinking in mid-answer, or looking up: the times don’t say which.',
        ],
      };
  }
}

const clockDoubt =
  'That it goes with the clock does not mean that the clock does it: time of day, mood and set differ between days as well. Only a clock trial, its days drawn by lot, can show that.';

/** What the parent's rulings did to a count. */
function ruledOn({ accepted, slips }: { readonly accepted: number; readonly slips: number }): string {
  const right =
    accepted > 0 ? ` ${capital(inWords(accepted))} of them ${isOrAre(accepted)} right by your ruling.` : '';
  return `${right}${slips > 0 ? ` ${capital(many(slips, 'wrong answer', 'wrong answers'))} you called ${slips === 1 ? 'a slip' : 'slips'}; in this count ${slips === 1 ? 'it stays' : 'they stay'} wrong.` : ''}`;
}

function fineCount({ timed, band }: Extract<SheetSentence, { kind: 'fine' }>): string {
  if (!timed) return 'at least nine in ten right';
  if (band === null) return 'the count is high enough';
  return `the count is in the ${band === 'firm' ? 'top' : 'second'} of the four bands`;
}

function nineInTenWithout(slips: number): string {
  if (slips === 0) return '';
  return ` Nine in ten is reckoned without the ${slips === 1 ? 'one you called a slip' : `${inWords(slips)} you called slips`}.`;
}

/** A few wrong answers are too few themselves; of more, the days they can be set beside. */
function tooFewOf(wrong: number): string {
  if (wrong === 0 || wrong > 3) return 'Too few sheets yet';
  return `${capital(many(wrong, 'wrong answer is', 'wrong answers are'))} too few`;
}

function wholeOf(count: number): string {
  if (count === 1) return 'The one fact';
  return count === 2 ? 'Both facts' : `All ${inWords(count)} facts`;
}

function daysSide({ days, facts }: Flustered): string {
  return `The same ${facts} facts on ${days} days with the clock and on days near them without. It is looked at from time to time, so Over time, reckoned today, may give other numbers.`;
}

function longer({ ratio }: Flustered): string {
  return `${partOf(ratio ?? 1)} longer`;
}

function shares({ rightWith, ofWith, rightWithout, ofWithout }: Flustered): string {
  return `${rightWith} of ${ofWith} with it, ${rightWithout} of ${ofWithout} without`;
}
