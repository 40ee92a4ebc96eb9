import type { Chance } from './chance';

/** Which of the days on which the clock could be on have it: one of every two, by the toss of a coin. */
export interface ClockDraw {
  next(): boolean;
}

export function createClockDraw(chance: Chance): ClockDraw {
  let second: boolean | null = null;
  return {
    next() {
      if (second !== null) {
        const drawn = second;
        second = null;
        return drawn;
      }
      const drawn = chance.happens(0.5);
      second = !drawn;
      return drawn;
    },
  };
}
