import type { Band } from '../../core/marking/band';
import type { NoBand } from '../../core/marking/marked';
import type { Day, Id } from '../../core/record/stamp';
import type { Verdict } from './verdict';

/** Extra rows after a sheet: described, never tested, since they hold what was missed or not reached. */
export interface RowsAfter {
  readonly answers: number;
  readonly right: number;
  readonly thinkS: number | null;
}

/** What one sheet says. Times in seconds. */
export interface SittingReading {
  readonly sitting: Id;
  readonly day: Day;
  readonly timed: boolean;
  readonly length: number;
  readonly right: number;
  readonly rightByBell: number;
  readonly reached: number;
  readonly wrong: number;
  readonly skipped: number;
  readonly band: Band | null;
  readonly noBand: NoBand | null;
  /** Usual think time of the right answers. */
  readonly thinkS: number | null;
  readonly rows: RowsAfter | null;
  /** Described only: pauses between digits these hands don't need, answers of the card before, slips of the keys. */
  readonly pausesInside: number | null;
  readonly perseverations: number;
  readonly slips: number;
  readonly verdicts: readonly Verdict[];
}
