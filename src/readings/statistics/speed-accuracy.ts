/** Time for each right answer, wrong ones paid for: `timeMs` over the share right. Vandierendonck 2018. */
export function inverseEfficiencyMs(timeMs: number, shareWrong: number): number {
  return timeMs / (1 - shareWrong);
}
