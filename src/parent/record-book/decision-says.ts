import type { FactId } from '../../core/fact/fact';
import { parseFact } from '../../core/fact/fact';
import { writtenFact } from '../../core/fact/written';
import type { DayChange } from '../../core/record/household-record';
import type { Sat } from '../../core/record/sat';
import { readChange } from '../../core/record/settings';
import type { Id } from '../../core/record/stamp';
import type { Decision } from '../../state/record-book/record-book';
import { rulingText } from '../marking/words';
import { shortDay } from '../parts/when';
import { opsText } from '../spread/words';
import { count, listed } from '../words';
import { childSettingsSaid, householdSettingsSaid } from './setting-says';

/** How a sentence names what a record only has the id of. */
export interface Names {
  child(id: Id): string;
  set(id: Id): string;
  /** What was asked on a sitting; empty where it has not arrived. */
  prompts(sitting: Id): Sat['prompts'];
  /** What was decided under an id; `null` where it is not here. */
  decision(id: Id): Decision | null;
}

/** What was decided, as one plain sentence. */
export function decisionSaid(record: Decision, names: Names): string {
  switch (record.kind) {
    case 'childAdded':
      return `${record.name} was added.`;
    case 'childChanged':
      return childChanged(record, names);
    case 'childDeleted':
      return 'A child was deleted for good.';
    case 'setMade':
      return record.removed
        ? `The own set “${record.name}” was removed.`
        : `The own set “${record.name}”: ${count(record.facts.length, 'fact', 'facts')}.`;
    case 'setStarted':
      return `${names.child(record.child)} begins “${names.set(record.set)}”.`;
    case 'setKept':
      return `${names.child(record.child)}: “${names.set(record.set)}” is ${record.kept ? 'kept in practice' : 'no longer kept in practice'}.`;
    case 'factsTicked':
      return `${names.child(record.child)}: ${record.known ? 'known already' : 'no longer ticked as known'}: ${factsSaid(record.facts)}.`;
    case 'childSettingsChanged':
      return `${names.child(record.child)}: ${childSettingsSaid(readChange(record.changes))}.`;
    case 'householdSettingsChanged':
      return `For everyone: ${householdSettingsSaid(record.changes)}.`;
    case 'trialDrawn':
      return `${names.child(record.child)}: a clock trial of ${count(record.order.length, 'day', 'days')} was drawn.`;
    case 'trialStopped':
      return `${names.child(record.child)}: the clock trial was stopped.`;
    case 'spreadAsked':
      return `${names.child(record.child)}: two days of a few facts from every set of ${opsText(record.ops)}.`;
    case 'lineWritten':
      return record.line === null
        ? `The line for ${factSaid(record.fact)} is the usual one again.`
        : `Your line for ${factSaid(record.fact)}: “${record.line}”.`;
    case 'spokenChecked':
      return `${names.child(record.child)}: ${count(record.answers.length, 'fact', 'facts')} asked aloud on ${shortDay(record.day)}.`;
    case 'yearBegun':
      return `The school year ${record.name} begins on ${shortDay(record.day)}.`;
    case 'remarkWritten':
      return `${names.child(record.child)}: remarks on ${shortDay(record.from)} to ${shortDay(record.to)} ${record.text === '' ? 'taken away' : 'written'}.`;
    case 'sheetPrinted':
      return `${names.child(record.child)}: a sheet of ${count(record.facts.length, 'fact', 'facts')} was printed for ${shortDay(record.forDay)}.`;
    case 'dayChanged':
      return `${names.child(record.child)}, ${shortDay(record.day)}: ${dayChangeSaid(record.change)}.`;
    case 'ruled':
      return `${names.child(record.child)}, ${shortDay(record.targetDay)}: ${rulingText(record.ruling, names.prompts(record.target), names.child)}`;
    case 'undone':
      return undoneSaid(names.decision(record.target), names);
  }
}

function undoneSaid(target: Decision | null, names: Names): string {
  if (target === null) return 'Something no longer here was taken back.';
  if (target.kind === 'undone') return `Put back: ${chainEnd(target, names)}`;
  return `Taken back: ${decisionSaid(target, names)}`;
}

/** What an undoing of an undoing is about in the end. */
function chainEnd(record: Decision, names: Names): string {
  if (record.kind !== 'undone') return decisionSaid(record, names);
  const target = names.decision(record.target);
  // An undoing is later than what it takes back; anything else came from a file changed by hand.
  return target && target.seq < record.seq ? chainEnd(target, names) : 'something no longer here.';
}

function childChanged(
  { child, name, edge, archived }: Extract<Decision, { kind: 'childChanged' }>,
  names: Names,
): string {
  const parts = [
    ...(name === undefined ? [] : [`the name is ${name}`]),
    ...(edge === undefined ? [] : ['the woven edge was chosen']),
    ...(archived === undefined ? [] : [archived ? 'archived' : 'brought back']),
  ];
  return `${names.child(child)}: ${parts.length === 0 ? 'nothing changed' : listed(parts)}.`;
}

function dayChangeSaid(change: DayChange): string {
  const parts = [
    ...(change.timed === undefined ? [] : [change.timed ? 'with the clock' : 'without the clock']),
    ...(change.length === undefined ? [] : [`${change.length} facts`]),
    ...(change.skip ? ['no sheet'] : change.skip === false ? ['a sheet after all'] : []),
    ...(change.school ? ['school'] : []),
    ...(change.straight ? ['straight to the sheet'] : []),
    ...(change.heard ? ['went on from the first try'] : []),
    ...(change.later && change.later.length > 0 ? ['some of it on another day'] : []),
  ];
  return parts.length === 0 ? 'as usual' : parts.join('; ');
}

const mostNamed = 4;

function factsSaid(facts: readonly FactId[]): string {
  if (facts.length === 0) return 'nothing';
  const named = facts.slice(0, mostNamed).map(factSaid);
  const more = facts.length - named.length;
  return listed(more > 0 ? [...named, `${more} more`] : named);
}

function factSaid(id: FactId): string {
  const fact = parseFact(id);
  return fact ? writtenFact(fact) : 'a fact this version does not know';
}
