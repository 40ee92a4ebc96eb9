import type { FactId } from '../core/fact/fact';
import { factsOf } from '../core/fact/fact-list';
import type { CrewMember, MadeSet } from './crew';

/** The facts a + b to ten that a rule takes. */
function toTen(rule: (a: number, b: number) => boolean): FactId[] {
  return factsOf('add')
    .filter(({ a, b, answer }) => answer <= 10 && rule(a, b))
    .map(({ id }) => id);
}

const plusTwo: MadeSet = {
  id: 'd0f1c8a2-6a53-4c0e-9a41-2f5b7e90c301',
  name: 'Plus 2, to ten',
  facts: toTen((a, b) => Math.min(a, b) >= 2 && (a === 2 || b === 2)),
};
const doubles: MadeSet = {
  id: 'd0f1c8a2-6a53-4c0e-9a41-2f5b7e90c302',
  name: 'Doubles and near doubles, to ten',
  facts: toTen((a, b) => Math.abs(a - b) <= 1 && Math.min(a, b) >= 2),
};
const threes: MadeSet = {
  id: 'd0f1c8a2-6a53-4c0e-9a41-2f5b7e90c303',
  name: 'Plus 3, to ten',
  facts: toTen((a, b) => Math.min(a, b) >= 3 && (a === 3 || b === 3)),
};

/**
 * Six: counts, and begins to remember; checks what she has counted; small, slow hands. The question she poses: does
 * she know it by now, or does she count?
 */
export const wren: CrewMember = {
  id: '7b1f0f9e-33a4-4f6a-8d5c-0c6a1e2b4d01',
  name: 'Wren',
  edge: 3,
  traits: {
    ageYears: 6,
    hand: { firstKeyMs: 950, nextKeyMs: 520, doneMs: 620, spread: 0.2 },
    via: 'touch',
    before: ({ a, b }) => (Math.min(a, b) <= 1 ? 14 : a === b ? 9 : Math.max(1, 9 - a - b)),
    learning: 0.5,
    right: { memory: 0.98, step: 0.975 },
    rushing: { untimed: 0.01, timed: 0.02 },
    checking: 0.2,
    skipping: 0.02,
    slipping: 0.012,
    noticing: 0.6,
    clock: { logThink: 0, accuracy: 0 },
    tiring: 0.12,
  },
  sitsAt: [9, 2],
  settings: { length: 10, layout: 'stacked' },
  ticked: [],
  ownSets: [plusTwo, doubles, threes],
  sets: ['plus-0-and-1', plusTwo.id, doubles.id, threes.id],
  leastDays: 7,
  clock: 'never',
  choosesCards: true,
  misses: [12, 13],
  // A little friend of hers had the tablet for a moment.
  mishaps: [{ fromDay: 9, on: 'untimed', mishap: { what: 'stopped', afterCards: 4 }, isVoid: true }],
};
