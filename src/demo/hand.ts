import type { Key } from '../core/record/sat';
import { soonestKeyMs } from './assumptions';
import type { Chance } from './chance';
import type { Traits } from './made-child';
import { strayDigit } from './wrong-answer';

/** One key to come: which, and how long after the key before it, or after the card's onset. */
export interface PlannedKey {
  readonly key: Key;
  readonly afterMs: number;
}

/** The keys of an answer, *done* last; a slip of the finger among them, taken back where it is noticed. */
export function keysFor(answer: number, thinkMs: number, traits: Traits, chance: Chance): PlannedKey[] {
  const { hand, slipping, noticing } = traits;
  const lasting = (ms: number) => ms * chance.factor(hand.spread);
  const keys: PlannedKey[] = [];
  const put = (key: string, afterMs: number) => keys.push({ key: key as Key, afterMs });
  for (const digit of String(answer)) {
    const afterMs =
      keys.length === 0
        ? Math.max(soonestKeyMs, lasting(hand.firstKeyMs) + thinkMs)
        : lasting(hand.nextKeyMs);
    if (chance.happens(slipping)) {
      put(strayDigit(digit, chance), afterMs);
      if (!chance.happens(noticing)) continue;
      put('back', lasting(hand.doneMs));
      put(digit, lasting(hand.nextKeyMs));
    } else put(digit, afterMs);
  }
  put('done', lasting(hand.doneMs));
  return keys;
}

/** The skip key, pressed when thinking has led nowhere. */
export function skipKey(thinkMs: number, { hand }: Traits, chance: Chance): PlannedKey[] {
  const afterMs = Math.max(soonestKeyMs, hand.firstKeyMs * chance.factor(hand.spread) + thinkMs);
  return [{ key: 'skip', afterMs }];
}
