import type { FactId } from '../../core/fact/fact';
import type { Id } from '../../core/record/stamp';
import type { ReadSat } from '../child-log/child-log';
import { meetingsOf } from '../clock-effect/meetings-of';
import { lookAtClock } from './clock-look';
import { lookAfter } from './looks';
import type { Flustered } from './verdict';

interface Crude {
  n: number;
  log: number;
  right: number;
}

/** A difference of so few of its own standard errors, taken without pairing, would not pass the exact tests. */
const fewestErrors = 1.4;

/**
 * Follows the days with and without the clock in the course of one set, and takes the looks that are due. A new set
 * is a new question: what was found on the last one no longer counts.
 */
export class ClockWatch {
  #set: Id | null = null;
  #sheets: ReadSat[] = [];
  #days = 0;
  #lastDay = '';
  #facts = new Map<FactId, { with: Crude; without: Crude }>();
  #standing: Flustered | null = null;

  /** Takes in one sheet, and what stands after it. */
  add(read: ReadSat): Flustered | null {
    const { sat } = read.ruled;
    if (sat.set !== this.#set) this.#begin(sat.set);
    if (!saysSomething(read)) return this.#standing;
    this.#sheets.push(read);
    this.#count(read);
    if (sat.clock === null || sat.day === this.#lastDay) return this.#standing;
    this.#days += 1;
    this.#lastDay = sat.day;
    const look = lookAfter(this.#days);
    if (!look) return this.#standing;
    const meetings = () => this.#sheets.flatMap(({ ruled, marked }) => meetingsOf(ruled.sat, marked));
    this.#standing = this.#mayFind() ? lookAtClock(meetings(), look.alpha) : null;
    return this.#standing;
  }

  /** What the last look found. */
  standing(): Flustered | null {
    return this.#standing;
  }

  /** Whether no look has been possible yet. */
  isEarly(): boolean {
    return lookAfter(this.#days) === null && this.#days < firstLookDays;
  }

  #begin(set: Id | null): void {
    this.#set = set;
    this.#sheets = [];
    this.#days = 0;
    this.#facts.clear();
    this.#standing = null;
  }

  #count({ answers, ruled }: ReadSat): void {
    for (const { fact, firstKeyMs, outcome } of answers) {
      let own = this.#facts.get(fact.id);
      if (!own) {
        own = { with: { n: 0, log: 0, right: 0 }, without: { n: 0, log: 0, right: 0 } };
        this.#facts.set(fact.id, own);
      }
      const kind = ruled.sat.clock ? own.with : own.without;
      kind.n += 1;
      kind.log += firstKeyMs === null ? 0 : Math.log(firstKeyMs);
      if (outcome === 'right') kind.right += 1;
    }
  }

  /** Ten years hold thousands of looks: a crude one over the facts spares most of them the exact tests. */
  #mayFind(): boolean {
    const met = [...this.#facts.values()].filter(({ with: one, without: other }) => one.n > 0 && other.n > 0);
    const slower = met.map(({ with: one, without: other }) => one.log / one.n - other.log / other.n);
    const wronger = met.map(({ with: one, without: other }) => other.right / other.n - one.right / one.n);
    return [slower, wronger].some((differences) => errorsOver(differences) >= fewestErrors);
  }
}

/** How many standard errors the mean of differences lies over 0. */
function errorsOver(differences: readonly number[]): number {
  const count = differences.length;
  if (count < 2) return 0;
  const mean = differences.reduce((sum, one) => sum + one, 0) / count;
  const squares = differences.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return mean === 0 ? 0 : mean / Math.sqrt(squares / (count - 1) / count);
}

const firstLookDays = 6;

/** As with the clock effect: the first sheet of a day, unbroken. */
function saysSomething({ ruled, marked, counts }: ReadSat): boolean {
  return counts && !ruled.sat.second && (marked.noBand === null || marked.noBand === 'untimed');
}
