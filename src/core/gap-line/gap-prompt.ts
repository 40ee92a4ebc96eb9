import { type GapLine, parseLine } from './gap-line';
import { parseStory, type Story } from './story';

/** The gap line or story an id names; `null` for any other. */
export function parseGapPrompt(id: string): GapLine | Story | null {
  return parseLine(id) ?? parseStory(id);
}

/** Whether the digits given answer a gap line or a story: 08 is 8. Never so for an id that names neither. */
export function isGapRight(id: string, given: string | null): boolean {
  const prompt = parseGapPrompt(id);
  return prompt !== null && given !== null && /^\d+$/.test(given) && Number(given) === prompt.answer;
}
