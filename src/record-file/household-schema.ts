import * as v from 'valibot';
import type { Operation } from '../core/fact/fact';
import type {
  DayChange,
  LaterStep,
  PaperShape,
  Ruling,
  SpokenAnswer,
  TrialDrawn,
  TrialKind,
} from '../core/record/household-record';
import type { LogRecord } from '../core/record/record';
import type { ChildSettings, HouseholdSettings } from '../core/record/settings';
import { sight } from './sat-schema';
import {
  count,
  day,
  type FieldsOf,
  factId,
  id,
  oneOf,
  shortText,
  small,
  stamp,
  text,
  upTo,
  within,
} from './stamp-schema';

/** The longest sheet, in facts. */
const length = upTo(100);
const rows = upTo(20);
const edge = within(-1e9, 1e9);

const layout = oneOf<ChildSettings['layout']>({ across: true, stacked: true });

const perBand = <S extends v.GenericSchema>(of: S) =>
  v.looseObject({ firm: of, even: of, loose: of, thin: of });

const childSettings = v.looseObject({
  length,
  timed: v.boolean(),
  allowanceS: within(0, 86_400),
  sight,
  takesItself: v.boolean(),
  limits: v.looseObject({ firm: small, even: small, loose: small }),
  rows: perBand(rows),
  rowsSent: oneOf<ChildSettings['rowsSent']>({ itself: true, parent: true }),
  keptShare: within(0, 1),
  layout,
  keepTimes: v.boolean(),
  keypad: oneOf<ChildSettings['keypad']>({ phone: true, calculator: true }),
  hand: v.picklist(['right', 'left']),
  setOrder: v.array(id),
  minutes: within(0, 1440),
  schoolDays: v.array(upTo(7)),
  cards: v.boolean(),
  newFacts: v.nullable(upTo(100)),
  lookBackEvery: small,
  spokenEvery: small,
  gapLines: v.boolean(),
});

/** Older records say only whether there are spoken checks. */
const settingsChange = v.looseObject({
  ...v.partial(childSettings).entries,
  spokenChecks: v.exactOptional(v.boolean()),
});

const householdSettings = v.looseObject({
  bandNames: perBand(shortText),
  sounds: v.boolean(),
  keySound: v.boolean(),
  paperSize: v.nullable(v.picklist(['a4', 'letter'])),
} satisfies FieldsOf<HouseholdSettings>);

const rule = <W extends Ruling['what'], E extends FieldsOf<Omit<Extract<Ruling, { what: W }>, 'what'>>>(
  what: W,
  fields: E,
) => v.looseObject({ what: v.literal(what), ...fields });

const ruling = v.variant('what', [
  rule('accept', { place: small }),
  rule('slip', { place: small, slip: v.boolean() }),
  rule('void', {}),
  rule('wrongChild', { child: id }),
  rule('notOwnWork', {}),
  rule('bandAnyway', {}),
  rule('rows', { rows }),
]);

const laterStep = oneOf<LaterStep>({
  firstTry: true,
  cards: true,
  sheet: true,
  lookBack: true,
  rows: true,
  mending: true,
  lines: true,
});

const dayChange = v.looseObject({
  timed: v.exactOptional(v.boolean()),
  length: v.exactOptional(length),
  skip: v.exactOptional(v.boolean()),
  school: v.exactOptional(v.boolean()),
  straight: v.exactOptional(v.boolean()),
  heard: v.exactOptional(v.boolean()),
  later: v.exactOptional(v.array(laterStep)),
} satisfies FieldsOf<DayChange>);

const paperShape = v.looseObject({
  length,
  layout,
  hasKept: v.boolean(),
} satisfies FieldsOf<PaperShape>);

type Kind = Exclude<LogRecord['kind'], 'sat'>;
type Fields<K extends Kind> = FieldsOf<Omit<Extract<LogRecord, { kind: K }>, keyof typeof stamp | 'kind'>>;

const record = <K extends Kind, E extends Fields<K>>(kind: K, fields: E) =>
  v.looseObject({ ...stamp, kind: v.literal(kind), ...fields });

const operation = oneOf<Operation>({ add: true, sub: true, mul: true, div: true });
const trialKind = oneOf<TrialKind>({ thread: true, noClock: true });
const trialPlan = oneOf<TrialDrawn['plan']>({ eight: true, ten: true, twelveInPairs: true });
const came = oneOf<SpokenAnswer>({ right: true, helped: true, notYet: true });

/** Every kind of record but the sitting, each under its name, so that none can be forgotten. */
const byKind = {
  childAdded: record('childAdded', { child: id, name: shortText, edge }),
  childChanged: record('childChanged', {
    child: id,
    name: v.exactOptional(shortText),
    edge: v.exactOptional(edge),
    archived: v.exactOptional(v.boolean()),
  }),
  childDeleted: record('childDeleted', { child: id }),
  setMade: record('setMade', {
    set: id,
    name: shortText,
    facts: v.array(factId),
    removed: v.exactOptional(v.boolean()),
  }),
  setStarted: record('setStarted', { child: id, set: id }),
  setKept: record('setKept', { child: id, set: id, kept: v.boolean() }),
  factsTicked: record('factsTicked', { child: id, facts: v.array(factId), known: v.boolean() }),
  childSettingsChanged: record('childSettingsChanged', { child: id, changes: settingsChange }),
  householdSettingsChanged: record('householdSettingsChanged', { changes: v.partial(householdSettings) }),
  trialDrawn: record('trialDrawn', { child: id, set: id, plan: trialPlan, order: v.array(trialKind) }),
  trialStopped: record('trialStopped', { child: id, trial: id }),
  spreadAsked: record('spreadAsked', { child: id, ops: v.array(operation) }),
  lineWritten: record('lineWritten', { fact: factId, line: v.nullable(shortText) }),
  spokenChecked: record('spokenChecked', {
    child: id,
    day,
    answers: v.array(v.looseObject({ fact: factId, came })),
  }),
  yearBegun: record('yearBegun', { day, name: shortText }),
  remarkWritten: record('remarkWritten', { child: id, from: day, to: day, text: text(8000) }),
  ruled: record('ruled', { child: id, target: id, targetDay: day, ruling }),
  undone: record('undone', { target: id }),
  dayChanged: record('dayChanged', { child: id, day, change: dayChange }),
  sheetPrinted: record('sheetPrinted', {
    child: id,
    day,
    forDay: day,
    set: id,
    seed: count,
    shape: paperShape,
    facts: v.array(factId),
  }),
} as const satisfies Readonly<Record<Kind, v.GenericSchema>>;

export const otherSchemas = Object.values(byKind);
