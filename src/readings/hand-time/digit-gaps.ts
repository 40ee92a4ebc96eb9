import type { KeyPress, Visit } from '../../core/record/sat';

/** The keys of a visit that fell while its card was up. */
export function ownKeys({ keys, late = 0 }: Visit): readonly KeyPress[] {
  return keys.slice(0, keys.length - late);
}

/** Whether a key is a digit. */
export function isDigit([key]: KeyPress): boolean {
  return key >= '0' && key <= '9';
}

/** The times in ms between one digit and the next with no other key between; none where times weren't kept. */
export function digitGaps(visit: Visit): readonly number[] {
  const gaps: number[] = [];
  const count = visit.keys.length - (visit.late ?? 0);
  for (let index = 1; index < count; index += 1) {
    const [before, key] = [visit.keys[index - 1], visit.keys[index]];
    if (!before || !key || !isDigit(before) || !isDigit(key)) continue;
    if (before[1] !== null && key[1] !== null) gaps.push(key[1] - before[1]);
  }
  return gaps;
}
