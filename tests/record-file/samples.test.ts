import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import schema from '../../public/record-file.schema.json' with { type: 'json' };
import { parsePrompt } from '../../src/core/fact/prompt';
import type { Ruling } from '../../src/core/record/household-record';
import type { LogRecord } from '../../src/core/record/record';
import type { Purpose } from '../../src/core/record/sat';
import { readHousehold } from '../../src/readings/document/read-household';
import { readRecordFile } from '../../src/record-file/read-record-file';
import { writeRecordFile } from '../../src/record-file/record-file';

// A file as version 1 wrote it. It is never made anew: what once was saved must be read for good.
const text = readFileSync(join(import.meta.dirname, 'samples/version-1.json'), 'utf8');
const reading = readRecordFile(text);
const file = 'file' in reading ? reading.file : null;
const records = file?.records ?? [];
const sats = records.flatMap((record) => (record.kind === 'sat' ? [record] : []));

// Each list names all there are, by the compiler's word.
const kinds: Readonly<Record<LogRecord['kind'], true>> = {
  sat: true,
  childAdded: true,
  childChanged: true,
  childDeleted: true,
  setMade: true,
  setStarted: true,
  setKept: true,
  factsTicked: true,
  childSettingsChanged: true,
  householdSettingsChanged: true,
  trialDrawn: true,
  trialStopped: true,
  spreadAsked: true,
  lineWritten: true,
  spokenChecked: true,
  yearBegun: true,
  remarkWritten: true,
  ruled: true,
  undone: true,
  dayChanged: true,
  sheetPrinted: true,
};
const purposes: Readonly<Record<Purpose, true>> = {
  sheet: true,
  row: true,
  mending: true,
  practice: true,
  cards: true,
  firstTry: true,
  lines: true,
};
const rulings: Readonly<Record<Ruling['what'], true>> = {
  accept: true,
  slip: true,
  void: true,
  wrongChild: true,
  notOwnWork: true,
  bandAnyway: true,
  rows: true,
};

describe('a file that version 1 saved', () => {
  it('is read, by the app’s check and by the JSON Schema, and written again with nothing lost', () => {
    expect('trouble' in reading ? reading.trouble : null).toBeNull();
    const validate = new Ajv2020({ strict: false }).compile(schema);
    expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
    const again = file && writeRecordFile(file.device, file.madeAt, file.records);
    expect(JSON.parse(again ?? '')).toEqual(JSON.parse(text));
  });

  it('holds every kind of record, of sitting and of ruling', () => {
    const names = (all: object) => Object.keys(all).sort();
    expect([...new Set(records.map(({ kind }) => kind))].sort()).toEqual(names(kinds));
    expect([...new Set(sats.map(({ purpose }) => purpose))].sort()).toEqual(names(purposes));
    const ruled = records.flatMap((record) => (record.kind === 'ruled' ? [record.ruling.what] : []));
    expect([...new Set(ruled)].sort()).toEqual(names(rulings));
  });

  it('asks for facts, copies, gap lines and stories, and each is known still', () => {
    const prompts = sats.flatMap((sat) => sat.prompts.map((id) => parsePrompt(id)));
    expect(new Set(prompts.map((prompt) => prompt?.kind))).toEqual(
      new Set(['fact', 'copy', 'line', 'story']),
    );
  });

  it('is read as it was: whose it is, how each sheet came out, and what is known of a fact', () => {
    const { children, later } = readHousehold(records);
    expect(later).toBe(0);
    expect(children.map(({ name }) => name)).toEqual(['Wren', 'Teo']);
    const [wren] = children;
    const counts = wren?.sittings.map(({ day, timed, right, wrong, skipped, lookBack }) => [
      day,
      timed ? 'timed' : lookBack ? 'look back' : 'at ease',
      right,
      wrong,
      skipped,
    ]);
    expect(counts).toEqual(sheets);
    expect(wren?.facts.find(({ fact }) => fact === 'add-6-2')).toMatchObject({
      answers: 4,
      right: 2,
      days: 2,
    });
  });
});

const sheets = [
  ['2026-09-07', 'at ease', 3, 1, 1],
  ['2026-09-08', 'timed', 5, 0, 0],
  ['2026-09-08', 'at ease', 2, 0, 0],
  ['2026-09-09', 'look back', 3, 0, 0],
  ['2026-09-09', 'at ease', 2, 0, 0],
  // One wrong, accepted by the parent.
  ['2026-09-09', 'at ease', 2, 0, 0],
];
