import { knownFact } from '../../../src/core/fact/fact-list';
import { parsePrompt } from '../../../src/core/fact/prompt';
import type { Key, SittingPlan } from '../../../src/core/record/sat';
import type { Chance } from './chance';
import { comes, type MadeChild } from './made-child';

/** What a made child does on each card of a sitting: keys with the time after the card's onset or the key before, ms. */
export interface ScriptedCard {
  /** From the card before to this one's onset. */
  readonly turnMs: number;
  readonly keys: readonly { readonly key: Key; readonly afterMs: number }[];
}

/** Whole thousandths, so that sums come out the same in any order. */
const micro = (ms: number) => Math.round(ms * 1000) / 1000;

/** A made child's doings on every card of a plan, reached or not. `met` counts how often each fact came before. */
export function scriptOf(
  child: MadeChild,
  plan: SittingPlan,
  met: ReadonlyMap<string, number>,
  chance: Chance,
): readonly ScriptedCard[] {
  const pace = chance.factor(0.06);
  const isSibling = plan.purpose === 'sheet' && chance.happens(child.sibling);
  const byDone = !plan.takesItself;
  return plan.prompts.map((id, place) => {
    const prompt = parsePrompt(id);
    const fact = knownFact(id);
    const along = place / Math.max(1, plan.prompts.length - 1);
    const answer = prompt?.answer ?? 0;
    if (!fact) return cardOf(child, String(answer), 0, byDone, chance);
    if (isSibling) return cardOf(child, wrongNumber(answer, chance), chance.between(50, 400), byDone, chance);
    const on = { timed: plan.clock !== null, along, pace };
    const { thinkMs, isRight } = comes(child, fact, met.get(id) ?? 0, on, chance);
    return cardOf(child, isRight ? String(answer) : wrongNumber(answer, chance), thinkMs, byDone, chance);
  });
}

function cardOf(
  { hand }: MadeChild,
  digits: string,
  thinkMs: number,
  byDone: boolean,
  chance: Chance,
): ScriptedCard {
  const lasting = (ms: number) => micro(ms * chance.factor(hand.spread));
  const keys = [...digits].map((digit, index) => ({
    key: digit as Key,
    afterMs: index === 0 ? micro(Math.max(280, lasting(hand.firstMs) + thinkMs)) : lasting(hand.gapMs),
  }));
  if (byDone) keys.push({ key: 'done', afterMs: lasting(hand.doneMs) });
  return { turnMs: micro(chance.between(9, 19)), keys };
}

/** A wrong number of as many digits, near the true one more often than not. */
function wrongNumber(answer: number, chance: Chance): string {
  const length = String(answer).length;
  for (;;) {
    const off = chance.below(2) === 0 ? 1 + chance.below(3) : 1 + chance.below(30);
    const number = chance.below(2) === 0 ? answer + off : answer - off;
    if (number >= 0 && number !== answer && String(number).length === length) return String(number);
  }
}
