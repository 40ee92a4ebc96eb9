import type { FactId } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';
import type { ReadSat } from '../child-log/child-log';
import { windowDays } from '../clock-effect/clock-effect';
import { meetingsOf } from '../clock-effect/meetings-of';
import { dayNumber } from '../day-number';
import { lookAtClock } from './clock-look';
import { firstLookDays, lastLookDays, lookAfter } from './looks';
import type { Flustered } from './verdict';

interface Crude {
  n: number;
  log: number;
  right: number;
}

/** A difference of so few of its own standard errors, taken without pairing, would not pass the exact tests. */
const fewestErrors = 1.4;

/**
 * Follows the days with and without the clock over a season, and takes the looks that are due. A season ends with the
 * last look, or with a break longer than days are ever set side by side; what stands then stands until the next look.
 */
export class ClockWatch {
  #sheets: ReadSat[] = [];
  #days = 0;
  #lastDay = '';
  #facts = new Map<FactId, { with: Crude; without: Crude }>();
  #standing: Flustered | null = null;

  /** Takes in one sheet; what stands after it. */
  add(read: ReadSat): Flustered | null {
    const { sat } = read.ruled;
    if (!saysSomething(read)) return this.#standing;
    if (this.#days >= lastLookDays || this.#isAfterBreak(sat.day)) this.#begin();
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
    return this.#days < firstLookDays;
  }

  #isAfterBreak(day: Day): boolean {
    const last = this.#sheets.at(-1)?.ruled.sat.day;
    return last !== undefined && dayNumber(day) - dayNumber(last) > windowDays;
  }

  #begin(): void {
    this.#sheets = [];
    this.#days = 0;
    this.#facts.clear();
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

/** As with the clock effect: the first sheet of a day, unbroken. */
function saysSomething({ ruled, marked, counts }: ReadSat): boolean {
  return counts && !ruled.sat.second && (marked.noBand === null || marked.noBand === 'untimed');
}
