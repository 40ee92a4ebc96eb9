import { type PromptId, parsePrompt } from '../../../src/core/fact/prompt';
import { markSat } from '../../../src/core/marking/mark-sat';
import type { Marked } from '../../../src/core/marking/marked';
import { noRulings, type SatRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat, SittingPlan } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { planOf, Sitter } from '../sitting/sitter';

export const limits = defaultChildSettings.limits;

export function marked(sat: Sat, rulings: Partial<SatRulings> = {}): Marked {
  return markSat(sat, { ...noRulings, ...rulings }, limits);
}

/** What to do on a card: answer right, answer 99, skip, or stop there. */
export type Deed = 'right' | 'wrong' | 'skip';

/**
 * Sits cards one after another, `cardMs` each with the first key half way, from 1000 ms on; places past the deeds are
 * left alone, and a sitting not done by then is stopped, or by the bell where there is one.
 */
export function sit(
  prompts: readonly PromptId[],
  deeds: readonly Deed[],
  changes: Partial<SittingPlan> = {},
  cardMs: number | readonly number[] = 1000,
): Sat {
  const sitter = new Sitter(planOf(prompts, changes));
  let atMs = 1000;
  for (const [index, deed] of deeds.entries()) {
    const tookMs = typeof cardMs === 'number' ? cardMs : (cardMs[index] ?? 1000);
    const prompt = prompts[index];
    if (!prompt) throw new Error('more deeds than prompts');
    const digits = deed === 'right' ? String(parsePrompt(prompt)?.answer) : '99';
    sitter.shown(atMs);
    if (deed !== 'skip') sitter.typeAll(digits, atMs + tookMs / 2);
    sitter.key(deed === 'skip' ? 'skip' : 'done', atMs + tookMs);
    atMs += tookMs;
  }
  if (sitter.state.ended === null && changes.clock) sitter.time(atMs + changes.clock.allowanceMs);
  if (sitter.state.ended === null) sitter.stopped(atMs);
  return sitter.sat();
}

/** The first `count` of these products, all with two-digit answers and all different facts. */
export function facts(count: number): readonly PromptId[] {
  const all: PromptId[] = [];
  for (let a = 4; a <= 9; a += 1) for (let b = 4; b <= 9; b += 1) all.push(`mul-${a}-${b}`);
  return all.slice(0, count);
}
