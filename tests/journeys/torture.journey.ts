import { expect, test } from 'vitest';
import { torture } from '../torture/torture';

// One seed, so that a run can be made again; when the kills fall differs from run to run all the same.
test('broken off 25 times at random, the app loses nothing and goes on', async () => {
  const { lost, torn, notTakenUp, unhandled, acknowledged } = await torture({
    seed: 11,
    rounds: 25,
    killsInTen: 3,
    steps: 4,
  });
  expect({ lost, torn, notTakenUp, unhandled }).toEqual({
    lost: [],
    torn: [],
    notTakenUp: [],
    unhandled: [],
  });
  expect(acknowledged).toBeGreaterThan(30);
});
