import { expect, test } from 'vitest';
import { startOnPaper } from '../../src/state/paper-start';

test('a day’s work on paper belongs to that day as it was here, and has no time of day', () => {
  const asked: number[] = [];
  const start = startOnPaper('2026-11-24', {
    zone: (atMs) => {
      asked.push(atMs);
      return { zone: 'Europe/Paris', offsetMin: 60 };
    },
  });
  const midnight = new Date(2026, 10, 24).getTime();
  expect(start).toEqual({ day: '2026-11-24', zone: 'Europe/Paris', offsetMin: 60, startedAt: midnight });
  // The zone of that day, not of the day it was entered on: an hour may have been put forward since.
  expect(asked).toEqual([midnight]);
});
