/** Every answer on the pages set beside the app has so many digits, and is taken with the last of them. */
export const digitsAsked = 2;

/** The nth question: two-digit answers, never twice the same running. */
export function askedNth(nth: number): string {
  return `${4 + (nth % 6)} × ${6 + (nth % 3)}`;
}
