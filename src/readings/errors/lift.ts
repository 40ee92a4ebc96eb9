import { hitsAtLeast } from '../statistics/poisson-binomial';
import { type AnswerFlag, answerTests } from './answer-flags';
import { productsOf, type Setting, tableOf } from './guess';
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

/** How often a wrong answer drawn blindly from the pool would carry a flag, 0 to 1. */
export function chanceOf(flag: AnswerFlag, setting: Setting, taking: Taking, pool: Pool = 'numbers'): number {
  const numbers = wrongNumbers(setting, taking, pool);
  if (numbers.length === 0) return 0;
  const hits = numbers.filter((number) => answerTests[flag]({ ...setting, digits: String(number), number }));
  return hits.length / numbers.length;
}

/** How often a flag was seen among wrong answers, and how often blind numbers would have carried it. */
export interface Lift {
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

/** A flag's share among wrong answers set against the chance of each answer's own way of taking. */
export function liftOf(
  flag: AnswerFlag,
  answers: readonly (WrongAnswer & { readonly taking: Taking })[],
  pool: Pool = 'numbers',
): Lift {
  const keyed = answers.flatMap((answer) =>
    answer.given === null || answer.given === ''
      ? []
      : [{ ...answer, digits: answer.given, number: Number(answer.given) }],
  );
  const hits = keyed.filter((guess) => answerTests[flag](guess)).length;
  const known = new Map<string, number>();
  const chances = keyed.map((guess) => {
    const key = `${guess.fact.id} ${guess.taking} ${guess.pad} ${guess.reach} ${guess.before}`;
    const chance = known.get(key) ?? chanceOf(flag, guess, guess.taking, pool);
    known.set(key, chance);
    return chance;
  });
  const expected = chances.reduce((sum, chance) => sum + chance, 0);
  return {
    hits,
    of: keyed.length,
    expected,
    lift: expected === 0 ? null : hits / expected,
    pMore: hitsAtLeast(hits, chances),
  };
}
