import { type Fact, type FactId, type Operation, parseFact } from '../fact/fact';

/** What the stories tell of: three settings of our own for each operation. */
export const settings = {
  add: ['bowl', 'shells', 'coat'],
  sub: ['candles', 'pegs', 'seeds'],
  mul: ['jars', 'tiles', 'bags'],
  div: ['plates', 'boxes', 'ribbon'],
} as const satisfies Readonly<Record<Operation, readonly string[]>>;

/** A setting's name. */
export type Setting = (typeof settings)[Operation][number];

/** `story-jars-mul-3-4`: the setting, then the fact it is built on. */
export type StoryId = `story-${Setting}-${FactId}`;

/** A one-step story built on a fact; its words are made of the setting and the fact's two numbers. */
export interface Story {
  readonly kind: 'story';
  readonly id: StoryId;
  readonly setting: Setting;
  readonly fact: Fact;
  readonly answer: number;
}

const pattern = /^story-([a-z]+)-([a-z]+-\d+-\d+)$/;

/** The story an id names; `null` for any other id, and where the setting does not tell of such a fact. */
export function parseStory(id: string): Story | null {
  const match = pattern.exec(id);
  const fact = match?.[2] === undefined ? null : parseFact(match[2]);
  if (!fact || !isTellable(fact)) return null;
  const setting = settings[fact.op].find((name) => name === match?.[1]);
  if (!setting) return null;
  return { kind: 'story', id: `story-${setting}-${fact.id}`, setting, fact, answer: fact.answer };
}

/** Whether a story can tell of a fact: nothing put in or left, one jar, or sharing with nobody is no story. */
export function isTellable({ op, a, b, answer }: Fact): boolean {
  const least = op === 'add' || op === 'sub' ? 1 : 2;
  return a >= least && b >= least && answer >= 1;
}
