import { knownFact, pairOf, type Reach } from '../../core/fact/fact-list';
import type { PromptId } from '../../core/fact/prompt';
import type { RuledSat } from '../../core/household/history';
import type { Id } from '../../core/record/stamp';
import type { ChildLog } from '../child-log/child-log';
import { type PlacedError, wrongAnswersOf } from './wrong-answers-of';

/** What was wrong or skipped in one sitting of a child, read against the tables it was taken from. */
export function wrongIn(
  { child }: Pick<ChildLog, 'child'>,
  ruled: Pick<RuledSat, 'sat' | 'rulings'>,
): readonly PlacedError[] {
  return wrongAnswersOf(ruled, child.settings.keypad, reachOf(ruled.sat.prompts));
}

/** The same of every sheet that counts, by the sheet. */
export function wrongOnSheets(log: ChildLog): ReadonlyMap<Id, readonly PlacedError[]> {
  const sheets = log.sats.filter(({ ruled, counts }) => counts && ruled.sat.purpose === 'sheet');
  return new Map(sheets.map(({ ruled }) => [ruled.sat.id, wrongIn(log, ruled)]));
}

/** How far the tables of a sheet go: to the 12s where it asks for any of them. */
function reachOf(prompts: readonly PromptId[]): Reach {
  const isLarge = (prompt: PromptId) => {
    const fact = knownFact(prompt);
    return fact !== null && pairOf(fact).some((part) => part > 9);
  };
  return prompts.some(isLarge) ? 12 : 9;
}
