/** An interval of a value, both ends within it, in the unit of the value. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The sureness of every interval shown unless a page asks for another. */
export const usualLevel = 0.95;
