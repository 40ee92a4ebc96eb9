import { type FactId, parseFact } from '../../core/fact/fact';
import { writtenFact } from '../../core/fact/written';

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

/** Keeps a number and its unit, and the parts of a fact, on one line. */
export function unbroken(text: string): string {
  return text
    .replace(/(\d) (s|in 100)(?![\w’])/g, '$1\u00a0$2')
    .replace(/(\d) ([+−×÷]) (?=\d)/g, '$1\u00a0$2\u00a0');
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

/** That answers the parent called slips were left out of a count; nothing where there are none. */
export function slipsLeftOut(slips: number): string {
  if (slips === 0) return '';
  return ` ${capital(inWords(slips))} that you called ${slips === 1 ? 'a slip is' : 'slips are'} not counted.`;
}

/** `a`, `a and b`, `a, b and c`. */
function listedWords(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
