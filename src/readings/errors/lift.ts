import { hitsAtLeast } from '../statistics/poisson-binomial';
import { type AnswerFlag, answerTests } from './answer-flags';
import { type Guess, productsOf, type Setting, tableOf } from './guess';
import type { WrongAnswer } from './read-error';

/** How an answer was taken: by itself at as many digits as the true one has, or by the done key. */
export type Taking = 'itself' | 'done';

/** Wrong answers that could have been given by chance: any number, or only another product of the table. */
export type Pool = 'numbers' | 'products';

/** The wrong numbers that this way of taking lets through: as long as the true one, or 0 to 99 (199 past it). */
function wrongNumbers(setting: Setting, taking: Taking, pool: Pool): readonly number[] {
  const { answer } = setting.fact;
  const all =
    pool === 'products'
      ? productsOf(tableOf(setting))
      : Array.from({ length: answer > 99 ? 200 : 100 }, (_, number) => number);
  const isAsLong = (number: number) => String(number).length === String(answer).length;
  return all.filter((number) => number !== answer && (taking === 'done' || isAsLong(number)));
}

/** The same as guesses, one by one. */
function blindGuesses(setting: Setting, taking: Taking, pool: Pool): readonly Guess[] {
  const { fact, before, pad, reach } = setting;
  return wrongNumbers(setting, taking, pool).map((number) => ({
    fact,
    before,
    pad,
    reach,
    digits: String(number),
    number,
  }));
}

/** How often a wrong answer drawn blindly from the pool would carry a flag, 0 to 1. */
export function chanceOf(flag: AnswerFlag, setting: Setting, taking: Taking, pool: Pool = 'numbers'): number {
  return shareWith(flag, blindGuesses(setting, taking, pool));
}

function shareWith(flag: AnswerFlag, guesses: readonly Guess[]): number {
  return guesses.length === 0 ? 0 : hitsAmong(flag, guesses) / guesses.length;
}

function hitsAmong(flag: AnswerFlag, guesses: readonly Guess[]): number {
  const test = answerTests[flag];
  let hits = 0;
  for (const guess of guesses) if (test(guess)) hits += 1;
  return hits;
}

/** What blind numbers would do in one setting, whatever came before it. */
interface Blind {
  readonly guesses: readonly Guess[];
  readonly numbers: ReadonlySet<number>;
  readonly chances: Map<AnswerFlag, number>;
}

const known = new Map<string, Blind>();

/** Kept: years of wrong answers ask for the same few hundred over and over. */
function blindIn(setting: Setting & { readonly taking: Taking }, pool: Pool): Blind {
  const { fact, pad, reach, taking } = setting;
  const key = `${fact.id} ${taking} ${pad} ${reach} ${pool}`;
  const before = known.get(key);
  if (before) return before;
  const guesses = blindGuesses(setting, taking, pool);
  const numbers = new Set(guesses.map(({ number }) => number));
  const blind = { guesses, numbers, chances: new Map<AnswerFlag, number>() };
  known.set(key, blind);
  return blind;
}

function knownChance(flag: AnswerFlag, { before: given }: Setting, blind: Blind): number {
  const { guesses, numbers, chances } = blind;
  // The one flag that looks at the card before: no number comes twice among the blind ones.
  if (flag === 'perseveration') return given !== null && numbers.has(given) ? 1 / guesses.length : 0;
  const before = chances.get(flag);
  if (before !== undefined) return before;
  const chance = shareWith(flag, guesses);
  chances.set(flag, chance);
  return chance;
}

/** How often a flag was seen among wrong answers, and how often blind numbers would have carried it. */
export interface Lift {
  readonly flag: AnswerFlag;
  readonly hits: number;
  /** Wrong answers that were keyed; omissions are left out. */
  readonly of: number;
  /** Hits to be expected by chance. */
  readonly expected: number;
  /** Hits over expected; `null` where chance gives none. */
  readonly lift: number | null;
  /** How likely that many hits or more are by chance alone. */
  readonly pMore: number;
}

/** The shares of some flags among wrong answers, each set against the chance of each answer's own way of taking. */
export function liftsOf(
  flags: readonly AnswerFlag[],
  answers: readonly (WrongAnswer & { readonly taking: Taking })[],
  pool: Pool = 'numbers',
): readonly Lift[] {
  const keyed = answers.flatMap((answer) => {
    const { given } = answer;
    if (given === null || given === '') return [];
    return [{ ...answer, digits: given, number: Number(given) }];
  });
  const beside = keyed.map((guess) => ({ guess, blind: blindIn(guess, pool) }));
  return flags.map((flag) => {
    const hits = hitsAmong(flag, keyed);
    const chances = beside.map(({ guess, blind }) => knownChance(flag, guess, blind));
    const expected = chances.reduce((sum, chance) => sum + chance, 0);
    const lift = expected === 0 ? null : hits / expected;
    return { flag, hits, of: keyed.length, expected, lift, pMore: hitsAtLeast(hits, chances) };
  });
}
