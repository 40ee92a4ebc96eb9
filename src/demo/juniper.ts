import { setById } from '../core/set/teaching-sets';
import type { CrewMember } from './crew';

const known = [2, 3, 4, 5].map((n) => `divide-by-${n}`);

/**
 * Nine: knows her facts; with the clock she is slower and less sure on the same ones. The question she poses: does
 * she not know them, or is it the clock?
 */
export const juniper: CrewMember = {
  id: '7b1f0f9e-33a4-4f6a-8d5c-0c6a1e2b4d03',
  name: 'Juniper',
  edge: 27,
  traits: {
    ageYears: 9,
    hand: { firstKeyMs: 600, nextKeyMs: 260, doneMs: 300, spread: 0.16 },
    via: 'touch',
    before: ({ a, b }) => Math.max(50, 75 - a / 3 - b),
    learning: 2,
    right: { memory: 0.985, step: 0.97 },
    rushing: { untimed: 0.01, timed: 0.02 },
    checking: 0.03,
    skipping: 0.05,
    slipping: 0.008,
    noticing: 0.7,
    clock: { logThink: Math.log(1.6), accuracy: 0.14 },
    tiring: 0.05,
  },
  sitsAt: [9, 41],
  settings: {},
  ticked: known.flatMap((id) => setById(id)?.facts ?? []),
  ownSets: [],
  sets: ['divide-by-8', 'divide-by-6', 'divide-by-9', 'divide-by-7'],
  leastDays: 11,
  clock: 'everyOtherDay',
  choosesCards: false,
  misses: [7, 24],
  // A lock came, and she had to take the rope.
  mishaps: [
    { fromDay: 16, on: 'timed', mishap: { what: 'away', afterCards: 9, awayMs: 260_000 }, isVoid: false },
  ],
};
