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
  if (keyed.length < fewestWrong) return { wrong: keyed.length, skipped, shares: null };
  const shares = liftsOf(flagsShown, keyed)
    .filter(({ hits }) => hits > 0)
    .toSorted((x, y) => y.hits - x.hits);
  return { wrong: keyed.length, skipped, shares };
}
