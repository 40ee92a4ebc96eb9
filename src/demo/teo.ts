import { setById } from '../core/set/teaching-sets';
import type { CrewMember } from './crew';

const known = ['times-2', 'times-5', 'times-0-and-1'];

/**
 * Eight: fast hands, careless, more so with the clock: wrong where he hurries, not where he does not know. The
 * question he poses: are these low counts ignorance, or hurry?
 */
export const teo: CrewMember = {
  id: '7b1f0f9e-33a4-4f6a-8d5c-0c6a1e2b4d02',
  name: 'Teo',
  edge: 11,
  traits: {
    ageYears: 8,
    hand: { firstKeyMs: 390, nextKeyMs: 190, doneMs: 230, spread: 0.18 },
    via: 'touch',
    before: ({ a, b }) => (Math.min(a, b) <= 2 || a === 5 || b === 5 ? 55 : a === b ? 24 : 15 - a - b / 2),
    learning: 1,
    right: { memory: 0.98, step: 0.985 },
    rushing: { untimed: 0.07, timed: 0.42 },
    checking: 0,
    skipping: 0.06,
    slipping: 0.03,
    noticing: 0.5,
    clock: { logThink: -0.05, accuracy: 0.01 },
    tiring: 0.03,
  },
  sitsAt: [9, 20],
  settings: {},
  ticked: [...new Set(known.flatMap((id) => setById(id)?.facts ?? []))],
  ownSets: [],
  sets: ['times-3', 'times-4', 'times-8', 'times-6'],
  leastDays: 11,
  clock: 'onceAccurate',
  choosesCards: false,
  misses: [17],
  mishaps: [],
};
