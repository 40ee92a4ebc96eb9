import type { GapLine, LineId } from '../gap-line/gap-line';
import { parseGapPrompt } from '../gap-line/gap-prompt';
import type { Story, StoryId } from '../gap-line/story';
import { type Fact, type FactId, parseFact } from './fact';

/** A number to enter as read, for practice of the keys and for the hand time: `copy-47`. */
export type CopyId = `copy-${number}`;

/** What a card can ask for: a fact, a number to copy, a gap line, a story. */
export type PromptId = FactId | CopyId | LineId | StoryId;

/** A card's question and the answer expected; a fact or a story has its fact. */
export type Prompt =
  | { readonly kind: 'fact'; readonly id: FactId; readonly fact: Fact; readonly answer: number }
  | { readonly kind: 'copy'; readonly id: CopyId; readonly answer: number }
  | GapLine
  | Story;

const copyPattern = /^copy-(0|[1-9]\d{0,2})$/;

const known = new Map<string, Prompt | null>();

/** The prompt an id names; `null` for anything else. Kept, since ten years ask for some 400 of them 600,000 times. */
export function parsePrompt(id: string): Prompt | null {
  const before = known.get(id);
  if (before !== undefined) return before;
  const prompt = parse(id);
  known.set(id, prompt);
  return prompt;
}

function parse(id: string): Prompt | null {
  const copied = copyPattern.exec(id);
  if (copied) {
    const answer = Number(copied[1]);
    return { kind: 'copy', id: `copy-${answer}`, answer };
  }
  const fact = parseFact(id);
  return fact ? { kind: 'fact', id: fact.id, fact, answer: fact.answer } : parseGapPrompt(id);
}
