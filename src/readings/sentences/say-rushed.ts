import type { Rushed } from '../sitting-verdict/verdict';
import type { Said, SheetSentence } from './sentence';
import { capital, inWords, many, slipsLeftOut } from './wording';

type RushedSentence = Extract<
  SheetSentence,
  { kind: 'rushedWrongQuicker' | 'rushedThanUsual' | 'rushedUnread' }
>;

/** A sheet that was rushed, in words. `who` is the child's name. */
export function sayRushed(sentence: RushedSentence, who: string): Said {
  const { wrong, of, quickS, otherS, leftS, slips } = sentence.verdict;
  switch (sentence.kind) {
    case 'rushedWrongQuicker': {
      const advice = sentence.advises ? ' Try a few days without the clock, or ask the facts aloud.' : '';
      return {
        text: `Rushed, it seems: ${wrong === 3 ? 'two of the three' : `half of the ${inWords(wrong)}`} wrong answers began within ${fine(quickS)}, half of the right ones only after ${fine(otherS)}${timeLeft(leftS)}.${advice}`,
        how: [
          `From ${of} answers given on this sheet.${withoutTime(sentence.untimed)}${slipsLeftOut(slips)} Someone who does not know a fact is mostly slower at it, not quicker.${sentence.bellFirst ? ' The wrong answers were quick, not the whole sheet: the bell came first.' : ''}`,
          luckOf(sentence.verdict),
        ],
      };
    }
    case 'rushedThanUsual':
      return {
        text: `Much quicker than usual and more often wrong: half of the answers began within ${fine(quickS)}, where ${fine(otherS)} is usual for ${who}, and ${inWords(wrong)} of ${of} were wrong or skipped${timeLeft(leftS)}.`,
        how: [
          `The same facts on the sheets of the last four weeks were set beside this sheet, fact by fact.${slipsLeftOut(slips)}`,
          'Hurry looks like this, and so does somebody else at the keys: you can rule that somebody helped. Asking a few aloud will show.',
        ],
      };
    case 'rushedUnread':
      return {
        text: `${capital(many(wrong, 'wrong answer was', 'wrong answers were'))} begun before the fact could be read, of ${of} given${timeLeft(leftS)}.`,
        how: [
          `Counted: first keys under 0.3 s after the card was there. Nobody reads and answers so soon.${slipsLeftOut(slips)}`,
          'That tells of guessing or playing with the keys, and nothing of the facts.',
        ],
      };
  }
}

/** Which of the answers given is not among those told of. */
function withoutTime(untimed: number): string {
  if (untimed === 0) return '';
  return ` ${capital(inWords(untimed))} more ${untimed === 1 ? 'has' : 'have'} no time that can be used.`;
}

/** What is beyond chance only over several sheets is said of those, and not of the one. */
function luckOf({ p, sheets }: Rushed): string {
  const seldom = p !== null && p < 0.001 ? 'once in 1,000 times' : 'once in 100 times';
  return sheets === 1
    ? `Luck alone would make the wrong answers of a sheet so much sooner less than ${seldom}.`
    : `One such sheet alone proves nothing. It is on this one and the ${inWords(sheets - 1)} like it before, taken together, that luck alone would make wrong answers so much sooner less than ${seldom}.`;
}

function timeLeft(leftS: number | null): string {
  return leftS === null || leftS < 1 ? '' : `, and ${Math.floor(leftS)} s were left at the end`;
}

/** To hundredths under 3 s: there a tenth may be all the difference. */
function fine(seconds: number): string {
  return `${seconds.toFixed(seconds < 3 ? 2 : 1)} s`;
}
