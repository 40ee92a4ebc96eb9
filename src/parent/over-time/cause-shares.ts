import type { Day } from '../../core/record/stamp';
import type { AnswerFlag } from '../../readings/errors/answer-flags';
import { type Lift, liftsOf } from '../../readings/errors/lift';
import { wrongOnSheets } from '../../readings/errors/wrong-on-sheets';
import type { ChildReading } from '../reading/child-reading';

/** How often wrong answers carry a mark, against how often blind numbers would. */
export type CauseShare = Lift;

/** Marks that overlap: an answer may carry several. Those that only refine another one are left out. */
const flagsShown: readonly AnswerFlag[] = [
  'operand',
  'table',
  'otherOperation',
  'operandNamed',
  'offByOne',
  'offByTwo',
  'countingString',
  'tenSlip',
  'reversal',
  'keyingSlip',
  'perseveration',
];

/** Wrong answers under which no shares are shown (our own decision, no source). */
const fewestWrong = 8;

/** Wrong and skipped answers of a child, and how they share out; `null` for the shares of too few. */
export interface CausesOverTime {
  readonly wrong: number;
  readonly skipped: number;
  /** Of the wrong ones called a slip by the parent; and accepted ones, which are not among them. */
  readonly slips: number;
  readonly accepted: number;
  readonly shares: readonly CauseShare[] | null;
}

/** The causes of wrong answers on the sheets of the days shown, the commonest first. */
export function causesOverTime(
  { log }: Pick<ChildReading, 'log'>,
  isShown: (day: Day) => boolean,
): CausesOverTime {
  const sats = log.sats.filter(({ ruled }) => isShown(ruled.sat.day));
  const errors = [...wrongOnSheets({ ...log, sats }).values()].flat();
  const keyed = errors.filter(({ given }) => given !== null && given !== '');
  const skipped = errors.length - keyed.length;
  const sheets = sats.filter(({ ruled, counts }) => counts && ruled.sat.purpose === 'sheet');
  const ruled = sheets.flatMap(({ answers }) => answers);
  const counted = {
    wrong: keyed.length,
    skipped,
    slips: ruled.filter(({ outcome, slip }) => outcome === 'wrong' && slip === true).length,
    accepted: ruled.filter(({ accepted }) => accepted).length,
  };
  if (keyed.length < fewestWrong) return { ...counted, shares: null };
  const shares = liftsOf(flagsShown, keyed)
    .filter(({ hits }) => hits > 0)
    .toSorted((x, y) => y.hits - x.hits);
  return { ...counted, shares };
}
