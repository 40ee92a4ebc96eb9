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

/** What one sheet says; the causes of its wrong answers are read apart. Times in seconds. */
export interface SittingReading {
  readonly sitting: Id;
  readonly day: Day;
  readonly timed: boolean;
  /** A day of a clock trial, which decides about the clock by itself. */
  readonly drawn: boolean;
  /** A look back at kept sets, without the clock. */
  readonly lookBack: boolean;
  readonly length: number;
  readonly right: number;
  readonly rightByBell: number;
  readonly reached: number;
  readonly wrong: number;
  /** Right by the parent's ruling, among those that count as right; and wrong ones that the parent called a slip. */
  readonly accepted: number;
  readonly slips: number;
  readonly skipped: number;
  readonly band: Band | null;
  readonly noBand: NoBand | null;
  /** Usual think time of the right answers. */
  readonly thinkS: number | null;
  readonly rows: RowsAfter | null;
  /** Gaps inside answers longer than these hands need when they only copy; `null` without enough copies. */
  readonly pausesInside: number | null;
  /** All gaps inside answers; `null` as above. */
  readonly gapsInside: number | null;
  /** Empty where the sheet does not count. */
  readonly verdicts: readonly Verdict[];
}
