import type { KeyPress, Visit } from '../../core/record/sat';

/** The keys of a visit that fell while its card was up. */
export function ownKeys({ keys, late = 0 }: Visit): readonly KeyPress[] {
  return late === 0 ? keys : keys.slice(0, keys.length - late);
}

/** Whether a key is a digit. */
export function isDigit(press: KeyPress): boolean {
  return press[0] >= '0' && press[0] <= '9';
}

/** The times in ms between one digit and the next with no other key between; none where times weren't kept. */
export function digitGaps(visit: Visit): readonly number[] {
  const gaps: number[] = [];
  forDigitGaps(visit, (gapMs) => gaps.push(gapMs));
  return gaps;
}

/** Takes each of the same times; ten years hold more of them than are worth a list. */
export function forDigitGaps({ keys, late = 0 }: Visit, take: (gapMs: number) => void): void {
  for (let index = 1; index < keys.length - late; index += 1) {
    const before = keys[index - 1];
    const key = keys[index];
    if (!before || !key || !isDigit(before) || !isDigit(key)) continue;
    if (before[1] !== null && key[1] !== null) take(key[1] - before[1]);
  }
}
