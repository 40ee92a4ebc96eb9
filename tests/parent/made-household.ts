import type { PromptId } from '../../src/core/fact/prompt';
import type { Draft } from '../../src/core/record/record';
import { setById } from '../../src/core/set/teaching-sets';
import { allRight, type Did, madeSat } from './made-sat';

/** Wren without a clock, Teo with one. */
export const twoChildren: readonly Draft[] = [
  { kind: 'childAdded', child: 'wren', name: 'Wren', edge: 0 },
  { kind: 'setStarted', child: 'wren', set: 'plus-2' },
  { kind: 'childSettingsChanged', child: 'wren', changes: { length: 10 } },
  { kind: 'childAdded', child: 'teo', name: 'Teo', edge: 3 },
  { kind: 'setStarted', child: 'teo', set: 'times-7' },
  { kind: 'childSettingsChanged', child: 'teo', changes: { timed: true } },
];

/** So many facts of a set, beginning again where it ends. */
export function promptsOf(set: string, length: number): readonly PromptId[] {
  const facts = setById(set)?.facts ?? [];
  return Array.from({ length }, (_, place) => facts[place % facts.length] as PromptId);
}

const sevens = promptsOf('times-7', 25);

/** Teo's timed sheet: one wrong, one skipped, the bell after 45 s; 14 right by then. */
export function teosSheet(other: Parameters<typeof madeSat>[2] = {}): Extract<Draft, { kind: 'sat' }> {
  const did: Did[] = allRight(sevens, 2800).map((one, place) => {
    if (place === 3) return { gave: '99', ms: 2800 };
    return place === 5 ? null : one;
  });
  const clock = { allowanceMs: 45_000, sight: 'thread' } as const;
  return madeSat(sevens, did, { child: 'teo', set: 'times-7', clock, takesItself: true, ...other });
}

/** Wren's sheet of ten without a clock, one wrong. */
export function wrensSheet(other: Parameters<typeof madeSat>[2] = {}): Extract<Draft, { kind: 'sat' }> {
  const prompts = promptsOf('plus-2', 10);
  const did = allRight(prompts, 4000).map((one, place) => (place === 2 ? { gave: '7', ms: 4000 } : one));
  return madeSat(prompts, did, { child: 'wren', set: 'plus-2', ...other });
}
