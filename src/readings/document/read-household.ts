import { type FactId, parseFact } from '../../core/fact/fact';
import { foldHousehold } from '../../core/household/fold-household';
import { effectiveHistory, noHistory } from '../../core/household/history';
import type { Household } from '../../core/household/household';
import type { HouseholdRecord } from '../../core/record/household-record';
import { type HistoryRecord, isOfHistory, type LogRecord } from '../../core/record/record';
import type { Id } from '../../core/record/stamp';
import { setById } from '../../core/set/teaching-sets';
import { readChildLog } from '../child-log/child-log';
import { documentVersion, type ReadingsDocument } from './document';
import { readChild } from './read-child';

/** Every reading of a household from its records, in any order of arrival. Children deleted for good are left out. */
export function readHousehold(records: readonly LogRecord[]): ReadingsDocument {
  const home: HouseholdRecord[] = [];
  const days: HistoryRecord[] = [];
  for (const record of records) {
    if (isOfHistory(record)) days.push(record);
    else home.push(record);
  }
  const household = foldHousehold(home);
  const history = effectiveHistory(days, household);
  return {
    format: 'sumstitch-readings',
    version: documentVersion,
    later: household.later + history.later,
    children: household.children.map((child) => {
      const own = history.children.get(child.id) ?? noHistory;
      return readChild(readChildLog(child, own, (set) => factsOfSet(household, set)));
    }),
  };
}

function factsOfSet({ ownSets, removedSets }: Household, id: Id): readonly FactId[] | null {
  const known = setById(id);
  if (known) return known.facts;
  const own = [...ownSets, ...removedSets].find((set) => set.id === id);
  return own ? own.facts.filter((fact) => parseFact(fact) !== null) : null;
}
