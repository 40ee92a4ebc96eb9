import { markSat } from '../../core/marking/mark-sat';
import { noRulings } from '../../core/marking/sat-rulings';
import type { Sat } from '../../core/record/sat';
import type { ChildSettings, HouseholdSettings } from '../../core/record/settings';
import { recordVersion, type Stamp } from '../../core/record/stamp';
import { leftSentence, resultSentence } from '../marking/result-words';

/** Nothing of a stamp shows in a result; the log gives the real one. */
const unstamped: Stamp = { id: 'unstamped', v: recordVersion, seq: 0, device: 'unstamped', at: 0 };

/** How a sitting will come out, in the words it is marked with once it is kept. */
export function satSentence(
  draft: Omit<Sat, keyof Stamp>,
  { limits }: ChildSettings,
  names: HouseholdSettings['bandNames'],
): string {
  const sat = { ...draft, ...unstamped };
  const marked = markSat(sat, noRulings, limits);
  return `${resultSentence(sat, marked, names)} ${leftSentence(marked)}`.trim();
}
