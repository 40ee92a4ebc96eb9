import { expect, test } from 'vitest';
import { tableOf } from './tally';
import { torture } from './torture';

const seed = Number(process.env['SEED'] ?? 20_260_301);
const rounds = Number(process.env['ROUNDS'] ?? 500);

test(`${rounds} rounds of torture lose nothing`, async () => {
  const tally = await torture({ seed, rounds, lanes: 3, killsInTen: 8, tell: (line) => console.log(line) });
  console.log(tableOf(tally));
  const { lost, torn, notTakenUp, unhandled } = tally;
  expect({ lost, torn, notTakenUp, unhandled }).toEqual({
    lost: [],
    torn: [],
    notTakenUp: [],
    unhandled: [],
  });
});
