import { rankSum } from '../statistics/rank-sum';
import { median } from '../statistics/robust-spread';

/** An answer given, for rushing: right or not, and the time to its first key in ms. */
export interface TimedAnswer {
  readonly right: boolean;
  readonly firstKeyMs: number;
}

/** Whether wrong answers came quicker than right ones. Fast and slow errors differ in kind (Coomans et al. 2016). */
export interface Rushing {
  readonly right: number;
  readonly wrong: number;
  /** Median time of wrong answers over that of right ones; `null` without both. */
  readonly ratio: number | null;
  /** How likely wrong answers so quick are by chance, among all answers. */
  readonly pQuicker: number;
}

/** Sets the times of wrong answers against those of right ones; one child, device and way of entry. */
export function rushingOf(answers: readonly TimedAnswer[]): Rushing {
  const times = (isRight: boolean) =>
    answers.filter(({ right }) => right === isRight).map(({ firstKeyMs }) => firstKeyMs);
  const [right, wrong] = [times(true), times(false)];
  const [rightMs, wrongMs] = [median(right), median(wrong)];
  return {
    right: right.length,
    wrong: wrong.length,
    ratio: rightMs === null || wrongMs === null ? null : wrongMs / rightMs,
    pQuicker: rankSum(wrong, right).pLess,
  };
}
