import { type FactId, parseFact } from '../../core/fact/fact';
import { writtenFact } from '../../core/fact/written';
import type { Day } from '../../core/record/stamp';
import type { Interval } from '../statistics/interval';

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A count in words up to ten. */
export function inWords(count: number): string {
  return words[count] ?? String(count);
}

/** A count in words with its noun. */
export function many(count: number, one: string, more: string): string {
  return `${inWords(count)} ${count === 1 ? one : more}`;
}

/** With a capital letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

const withUnit = new RegExp(`(\\d) (s|in 100|${months.join('|')})(?![\\w’])`, 'g');

/** Keeps a number and its unit or month, and the parts of a fact, on one line. */
export function unbroken(text: string): string {
  return text.replace(withUnit, '$1\u00a0$2').replace(/(\d) ([+−×÷]) (?=\d)/g, '$1\u00a0$2\u00a0');
}

/** A time as a person would say it: to half a second, under 10 s. */
export function about(seconds: number): string {
  if (seconds < 0.75) return 'under 1 s';
  const rounded = seconds < 10 ? Math.round(seconds * 2) / 2 : Math.round(seconds);
  return `about ${rounded} s`;
}

/** A share as a count in a hundred. */
export function percent(share: number): string {
  return `${Math.round(share * 100)} in 100`;
}

/** `is` for one, else `are`. */
export function isOrAre(count: number): string {
  return count === 1 ? 'is' : 'are';
}

const mostListed = 4;

/** Facts as written, the first few. */
export function listed(facts: readonly FactId[]): string {
  const written = facts.flatMap((id) => {
    const fact = parseFact(id);
    return fact ? [writtenFact(fact)] : [];
  });
  const rest = written.length - mostListed;
  if (rest > 1) return `${written.slice(0, mostListed).join(', ')} and ${rest} more`;
  return listedWords(written);
}

/** That what the parent called a slip is left out, although its own sheet counts it; nothing where there are none. */
export function slipsLeftOut(slips: number): string {
  if (slips === 0) return '';
  return slips === 1
    ? ' The one you called a slip is left out here; on its sheet it stays wrong.'
    : ` The ${inWords(slips)} you called slips are left out here; on their sheets they stay wrong.`;
}

const fractions = [
  [1 / 10, 'a tenth'],
  [1 / 5, 'a fifth'],
  [1 / 4, 'a quarter'],
  [1 / 3, 'a third'],
  [2 / 5, 'two fifths'],
  [1 / 2, 'half'],
  [2 / 3, 'two thirds'],
  [3 / 4, 'three quarters'],
] as const;

/** How much a ratio is off 1, as a person would say it: `about a fifth`, `6 in 100`. */
export function partOf(ratio: number): string {
  const part = Math.abs(ratio - 1);
  const [nearest, name] = fractions.reduce((best, one) =>
    Math.abs(one[0] - part) < Math.abs(best[0] - part) ? one : best,
  );
  return Math.abs(nearest - part) <= 0.05 && part >= 0.08 ? `about ${name}` : percent(part);
}

/** ` (14 to 28 in 100)`: how far off 1 a ratio most likely is; nothing where that is not known or lies on both sides. */
export function partBetween(interval: Interval | null): string {
  if (interval === null || (interval.low - 1) * (interval.high - 1) <= 0) return '';
  const [from = 0, to = 0] = [interval.low, interval.high]
    .map((ratio) => Math.round(100 * Math.abs(ratio - 1)))
    .sort((x, y) => x - y);
  return ` (${from} to ${to} in 100)`;
}

/** `10 Nov`. */
export function shortDate(day: Day): string {
  const [, month = 1, date] = day.split('-').map(Number);
  return `${date} ${months[month - 1]}`;
}

/** `a`, `a and b`, `a, b and c`. */
function listedWords(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
