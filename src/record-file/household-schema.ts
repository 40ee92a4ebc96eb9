import * as v from 'valibot';
import { count, day, factId, id, stamp } from './stamp-schema';

const perBand = <S extends v.GenericSchema>(of: S) =>
  v.looseObject({ firm: of, even: of, loose: of, thin: of });

const childSettings = v.looseObject({
  length: count,
  timed: v.boolean(),
  allowanceS: v.number(),
  sight: v.picklist(['thread', 'hidden']),
  takesItself: v.boolean(),
  limits: v.looseObject({ firm: count, even: count, loose: count }),
  rows: perBand(count),
  rowsSent: v.picklist(['itself', 'parent']),
  keptShare: v.number(),
  layout: v.picklist(['across', 'stacked']),
  keepTimes: v.boolean(),
  keypad: v.picklist(['phone', 'calculator']),
  hand: v.picklist(['right', 'left']),
  setOrder: v.array(id),
});

const householdSettings = v.looseObject({
  bandNames: perBand(v.string()),
  sounds: v.boolean(),
  keySound: v.boolean(),
});

const ruling = v.variant('what', [
  v.looseObject({ what: v.literal('accept'), place: count }),
  v.looseObject({ what: v.literal('slip'), place: count, slip: v.boolean() }),
  v.looseObject({ what: v.literal('void') }),
  v.looseObject({ what: v.literal('wrongChild'), child: id }),
  v.looseObject({ what: v.literal('notOwnWork') }),
  v.looseObject({ what: v.literal('bandAnyway') }),
  v.looseObject({ what: v.literal('rows'), rows: count }),
]);

const dayChange = v.looseObject({
  timed: v.exactOptional(v.boolean()),
  length: v.exactOptional(count),
  skip: v.exactOptional(v.boolean()),
});

const record = <K extends string, E extends v.ObjectEntries>(kind: K, entries: E) =>
  v.looseObject({ ...stamp, kind: v.literal(kind), ...entries });

/** Every kind of record but the sitting, as `core/record/household-record` has them. */
export const otherSchemas = [
  record('childAdded', { child: id, name: v.string(), edge: v.number() }),
  record('childChanged', {
    child: id,
    name: v.exactOptional(v.string()),
    edge: v.exactOptional(v.number()),
    archived: v.exactOptional(v.boolean()),
  }),
  record('childDeleted', { child: id }),
  record('setMade', {
    set: id,
    name: v.string(),
    facts: v.array(factId),
    removed: v.exactOptional(v.boolean()),
  }),
  record('setStarted', { child: id, set: id }),
  record('setKept', { child: id, set: id, kept: v.boolean() }),
  record('factsTicked', { child: id, facts: v.array(factId), known: v.boolean() }),
  record('childSettingsChanged', { child: id, changes: v.partial(childSettings) }),
  record('householdSettingsChanged', { changes: v.partial(householdSettings) }),
  record('trialDrawn', {
    child: id,
    set: id,
    plan: v.picklist(['eight', 'ten', 'twelveInPairs']),
    order: v.array(v.picklist(['thread', 'noClock'])),
  }),
  record('trialStopped', { child: id, trial: id }),
  record('spreadAsked', { child: id, ops: v.array(v.picklist(['add', 'sub', 'mul', 'div'])) }),
  record('ruled', { child: id, target: id, targetDay: day, ruling }),
  record('undone', { target: id }),
  record('dayChanged', { child: id, day, change: dayChange }),
] as const;
