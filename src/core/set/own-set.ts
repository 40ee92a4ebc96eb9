import type { FactId } from '../fact/fact';
import { isBasic, knownFact } from '../fact/fact-list';
import type { Id } from '../record/stamp';
import { type FactSet, setSize } from './fact-set';

/** Why a parent's own set cannot be used; the words are the page's. */
export type OwnSetFault =
  | 'noName'
  | 'longName'
  | 'noFacts'
  | 'tooFew'
  | 'tooMany'
  | 'repeated'
  | 'unknownFact';

/** The longest name of an own set, in characters. */
export const longestSetName = 40;

/** What is wrong with a parent's own set, worst first; empty when it can be used. */
export function checkOwnSet(name: string, facts: readonly string[]): readonly OwnSetFault[] {
  const faults: OwnSetFault[] = [];
  if (name.trim() === '') faults.push('noName');
  if (name.trim().length > longestSetName) faults.push('longName');
  if (facts.some((id) => !knownFact(id))) faults.push('unknownFact');
  if (new Set(facts).size < facts.length) faults.push('repeated');
  if (facts.length === 0) faults.push('noFacts');
  else if (facts.length < setSize.least) faults.push('tooFew');
  if (facts.length > setSize.most) faults.push('tooMany');
  return faults;
}

/** A parent's own set as a set; facts that are not known are left out, so that old data never breaks a sheet. */
export function ownSet(id: Id, name: string, facts: readonly FactId[]): FactSet {
  const known = [...new Set(facts)].flatMap((fact) => knownFact(fact) ?? []);
  const ops = new Set(known.map((fact) => fact.op));
  const [op = null] = ops;
  return {
    id,
    name: name.trim(),
    op: ops.size === 1 ? op : null,
    kind: 'own',
    reach: known.every((fact) => isBasic(fact.id)) ? 9 : 12,
    facts: known.map((fact) => fact.id),
    counterpart: null,
  };
}
