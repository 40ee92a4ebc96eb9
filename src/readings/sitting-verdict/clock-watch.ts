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

/** Under these differences between the two kinds of days, taken without pairing, a look can't find anything. */
const crudeLeast = { logMs: Math.log(1.05), share: 0.03 } as const;

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

  /** Sheets with the clock so far in the course of this set. */
  timedSheets(): readonly ReadSat[] {
    return this.#sheets.filter(({ ruled }) => ruled.sat.clock !== null);
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

  /** Ten years hold thousands of looks: a crude one spares most of them the exact tests. */
  #mayFind(): boolean {
    let [facts, log, share] = [0, 0, 0];
    for (const { with: one, without: other } of this.#facts.values()) {
      if (one.n === 0 || other.n === 0) continue;
      facts += 1;
      log += one.log / one.n - other.log / other.n;
      share += other.right / other.n - one.right / one.n;
    }
    return facts > 0 && (log > facts * crudeLeast.logMs || share > facts * crudeLeast.share);
  }
}

const firstLookDays = 6;

/** As with the clock effect: the first sheet of a day, unbroken. */
function saysSomething({ ruled, marked, counts }: ReadSat): boolean {
  return counts && !ruled.sat.second && (marked.noBand === null || marked.noBand === 'untimed');
}
