import type { Day } from '../../core/record/stamp';
import type { ReadSat } from '../child-log/child-log';
import { windowDays } from '../clock-effect/clock-effect';
import type { Meeting } from '../clock-effect/meeting';
import { meetingsOf } from '../clock-effect/meetings-of';
import { DayLines } from '../clock-effect/pair-days';
import { dayNumber } from '../day-number';
import { lookAtClock } from './clock-look';
import { Crude } from './crude';
import { firstLookDays, lastLookDays, lookAfter } from './looks';
import type { Flustered } from './verdict';

/**
 * Follows the days with and without the clock over a season, and takes the looks that are due. A season ends with the
 * last look, or with a break longer than days are ever set side by side; what stands then stands until the next look.
 */
export class ClockWatch {
  /** Sheets of the season, from the first not yet among the meetings on. */
  #sheets: ReadSat[] = [];
  #met: Meeting[] = [];
  #lines = new DayLines();
  /** Days of one kind still waiting for one of the other, and how many have found theirs. */
  #open = 0;
  #openWithClock = false;
  #pairs = 0;
  #lastDay = '';
  readonly #crude = new Crude();
  #standing: Flustered | null = null;

  /** Takes in one sheet; what stands after it. */
  add(read: ReadSat): Flustered | null {
    if (!saysSomething(read)) return this.#standing;
    const { day, clock } = read.ruled.sat;
    if (this.#pairs >= lastLookDays || this.#isAfterBreak(day)) this.#begin();
    this.#sheets.push(read);
    this.#crude.add(read.answers);
    const look = day !== this.#lastDay && this.#closesPair(clock !== null) ? lookAfter(this.#pairs) : null;
    this.#lastDay = day;
    if (!look) return this.#standing;
    this.#standing = this.#crude.mayFind() ? this.#look(look.alpha) : null;
    return this.#standing;
  }

  /** What the last look found. */
  standing(): Flustered | null {
    return this.#standing;
  }

  /** Whether no look has been possible yet. */
  isEarly(): boolean {
    return this.#pairs < firstLookDays;
  }

  /** Counts one more day, like brackets, as the facts' own days are paired; whether it closes a pair. */
  #closesPair(withClock: boolean): boolean {
    const closes = this.#open > 0 && this.#openWithClock !== withClock;
    this.#open += closes ? -1 : 1;
    if (closes) this.#pairs += 1;
    else this.#openWithClock = withClock;
    return closes;
  }

  #isAfterBreak(day: Day): boolean {
    return this.#lastDay !== '' && dayNumber(day) - dayNumber(this.#lastDay) > windowDays;
  }

  #look(alpha: number): Flustered | null {
    for (const { ruled, marked } of this.#sheets) {
      const met = meetingsOf(ruled.sat, marked);
      this.#met.push(...met);
      this.#lines.add(met);
    }
    this.#sheets = [];
    return lookAtClock(this.#lines, this.#met, alpha);
  }

  #begin(): void {
    this.#sheets = [];
    this.#met = [];
    this.#lines = new DayLines();
    this.#open = 0;
    this.#pairs = 0;
    this.#crude.clear();
  }
}

/** As with the clock effect: the first sheet of a day, the child's own, unbroken. */
function saysSomething({ ruled, marked, counts }: ReadSat): boolean {
  return counts && !ruled.sat.second && (marked.noBand === null || marked.noBand === 'untimed');
}
