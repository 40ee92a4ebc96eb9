import { type PromptId, parsePrompt } from '../fact/prompt';

/** The most digits a card holds. */
export const entryCap = 4;

/** The true answer of a prompt; `NaN`, which nothing equals, for one this build does not know. */
export function answerOf(prompt: PromptId | undefined): number {
  return (prompt === undefined ? null : parsePrompt(prompt))?.answer ?? Number.NaN;
}

/** Whether the digits given are the number asked for: 08 is 8. */
export function isRight(prompt: PromptId | undefined, given: string | null): boolean {
  return isAnswer(answerOf(prompt), given);
}

/** The same where the number is known. */
export function isAnswer(answer: number, given: string | null): boolean {
  return given !== null && given !== '' && Number(given) === answer;
}

/** How many digits take the answer by themselves. */
export function digitsOf(prompt: PromptId | undefined): number {
  const answer = answerOf(prompt);
  return Number.isNaN(answer) ? entryCap : String(answer).length;
}
