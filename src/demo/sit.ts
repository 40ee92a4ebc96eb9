import { type PromptId, parsePrompt } from '../core/fact/prompt';
import type { SittingPlan } from '../core/record/sat';
import {
  beginSitting,
  guardMs,
  type SittingEvent,
  type SittingState,
  stepSitting,
} from '../core/sitting/machine';
import { paintMs, soonestKeyMs, spread } from './assumptions';
import type { Chance } from './chance';
import { keysFor, type PlannedKey, skipKey } from './hand';
import type { Mind } from './made-child';
import { readingMs, type Setting, thinkOf } from './think';

/** Something that comes between, once that many cards are answered. */
export type Mishap =
  | { readonly what: 'away'; readonly afterCards: number; readonly awayMs: number }
  | { readonly what: 'stopped'; readonly afterCards: number };

/**
 * What the fingers are still at when a card has taken its answer by itself: a digit too many, which falls on the next
 * card and is not taken for its answer; or a slip just noticed, for which the card is opened again.
 */
type Over =
  | { readonly what: 'nothing' }
  | { readonly what: 'digit'; readonly key: PlannedKey }
  | { readonly what: 'slip'; readonly back: PlannedKey; readonly keys: readonly PlannedKey[] }
  | { readonly what: 'again'; readonly keys: readonly PlannedKey[] };

/** A made child sits a plan on the real machine; what it answers it has met once more. */
export function sit(
  plan: SittingPlan,
  mind: Mind,
  chance: Chance,
  mishap: Mishap | null = null,
): SittingState {
  const pace = chance.factor(spread.day);
  let state = beginSitting(plan);
  let atMs = chance.between(30, 60);
  let over: Over = { what: 'nothing' };
  let coming = mishap;

  const send = (event: SittingEvent) => {
    state = stepSitting(state, event).state;
  };
  const press = ({ key, afterMs }: PlannedKey) => {
    atMs = micro(atMs + afterMs);
    send({ type: 'key', key, atMs, via: mind.traits.via });
  };

  while (state.phase !== 'ended') {
    const onsetMs = micro(atMs + chance.between(paintMs.least, paintMs.most));
    send({ type: 'shown', atMs: onsetMs, by: 'element' });
    if (over.what === 'digit' && atMs + over.key.afterMs < onsetMs + guardMs) press(over.key);
    atMs = onsetMs;

    if (coming && state.visits.length >= coming.afterCards) {
      atMs = micro(atMs + chance.between(600, 1200));
      if (coming.what === 'stopped') send({ type: 'stopped', atMs });
      else {
        send({ type: 'left', why: 'hidden', atMs });
        atMs = micro(atMs + coming.awayMs);
        send({ type: 'returned', atMs });
      }
      coming = null;
      over = { what: 'nothing' };
      continue;
    }

    const { showing, place } = state;
    if (over.what === 'slip') {
      press(unhurried(over.back));
      const isOpenAgain = state.showing !== showing;
      over = isOpenAgain ? { what: 'again', keys: over.keys } : { what: 'nothing' };
      if (isOpenAgain) continue;
    }
    const along = place / Math.max(1, plan.prompts.length - 1);
    const setting = { timed: isTimed(state), along, pace };
    const keys: readonly PlannedKey[] =
      over.what === 'again' ? over.keys : keysOn(state, plan.prompts[place], mind, setting, chance);
    over = { what: 'nothing' };
    for (const [index, key] of keys.entries()) {
      press(key);
      if (state.showing === showing && !isEnded(state)) continue;
      over = overAfter(keys.slice(index + 1));
      break;
    }
    learn(state, mind);
  }
  return state;
}

function overAfter([next, digit, ...rest]: readonly PlannedKey[]): Over {
  if (!next || next.key === 'done') return { what: 'nothing' };
  return next.key === 'back' && digit
    ? { what: 'slip', back: next, keys: [unhurried(digit), ...rest] }
    : { what: 'digit', key: next };
}

/** A key meant for the card it falls on comes no sooner than the machine takes it for that. */
function unhurried({ key, afterMs }: PlannedKey): PlannedKey {
  return { key, afterMs: Math.max(afterMs, soonestKeyMs) };
}

/** The keys a made child presses on a card. */
function keysOn(
  { shown }: SittingState,
  id: PromptId | undefined,
  mind: Mind,
  setting: Setting,
  chance: Chance,
): readonly PlannedKey[] {
  const { traits } = mind;
  const prompt = id === undefined ? null : parsePrompt(id);
  if (!prompt) return skipKey(0, traits, chance);
  if (prompt.kind === 'copy') return keysFor(prompt.answer, 0, traits, chance);
  if (shown) return keysFor(prompt.answer, readingMs(mind, chance), traits, chance);
  if (prompt.kind === 'line') return keysFor(prompt.answer, readingMs(mind, chance), traits, chance);
  const { answer, thinkMs } = thinkOf(prompt.fact, mind, setting, chance);
  return answer === null ? skipKey(thinkMs, traits, chance) : keysFor(answer, thinkMs, traits, chance);
}

function learn({ plan, visits }: SittingState, mind: Mind): void {
  const last = visits.at(-1);
  const prompt = last?.end === 'taken' ? parsePrompt(plan.prompts[last.place] ?? '') : null;
  if (prompt?.kind === 'fact') mind.meet(prompt.fact);
}

function isTimed({ plan, clockGone }: SittingState): boolean {
  return plan.clock !== null && !clockGone;
}

// The loop above narrows the phase away, though every key may end the sitting.
function isEnded({ phase }: SittingState): boolean {
  return phase === 'ended';
}

function micro(ms: number): number {
  return Math.round(ms * 1000) / 1000;
}
