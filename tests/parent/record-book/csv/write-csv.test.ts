import { csvParse, csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { homeOf } from '../../../../src/core/household/bring-back';
import { foldHousehold } from '../../../../src/core/household/fold-household';
import { effectiveHistory } from '../../../../src/core/household/history';
import { isOfHistory } from '../../../../src/core/record/record';
import { makeBoat } from '../../../../src/demo/make-boat';
import { bookOf } from '../../../../src/parent/marking/book-of';
import { isoTime } from '../../../../src/parent/record-book/csv/iso-time';
import { csvLines, type Table, writeCsv } from '../../../../src/parent/record-book/csv/write-csv';

const { records } = makeBoat('2026-03-27', 5, () => ({ zone: 'Europe/Paris', offsetMin: 60 }));
const household = foldHousehold(homeOf(records));
const history = effectiveHistory(records.filter(isOfHistory), household);
const entries = bookOf(household, history).toReversed();

async function textOf(table: Table): Promise<string> {
  return (await writeCsv(table, household, history)).text();
}

describe('lines of cells', () => {
  // Read by d3-dsv, a reader of RFC 4180 by another hand.
  it('come back from another reader as they were, the guard apart', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom('=1+1', '+3', '-3', '@x', '\tx', '\rx', '\nx', 'a,b', '"'),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1 }), (lines) => {
        const guarded = lines.map((cells) =>
          cells.map((text) => (/^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text)),
        );
        expect(csvParseRows(csvLines(lines)).map((row) => [...row])).toEqual(guarded);
      }),
    );
  });

  it('end with CRLF, double their quotes, and leave numbers and nothing as they are', () => {
    expect(csvLines([['a "b", c', -3, null, '-3']])).toBe(`"a ""b"", c",-3,,"'-3"\r\n`);
  });
});

describe('the tables of eight weeks', () => {
  it('hold every sitting in a line of its own', async () => {
    const text = await textOf('sittings');
    const lines = csvParse(text);
    expect(lines.map(({ sitting }) => sitting)).toEqual(entries.map(({ sat }) => sat.id));
    expect(lines.map(({ right }) => Number(right))).toEqual(entries.map(({ marked }) => marked.right));
    expect(new Set(lines.map(({ child }) => child))).toEqual(new Set(['Wren', 'Teo', 'Juniper']));
    expect(text.split('\r\n')).toHaveLength(entries.length + 2);
    for (const { begun, day } of lines) {
      expect(begun).toMatch(new RegExp(`^${day}T\\d\\d:\\d\\d:\\d\\d\\+01:00$`));
    }
  });

  it('hold every answer, with what was asked and given', async () => {
    const lines = csvParse(await textOf('answers'));
    const places = entries.flatMap(({ marked }) => marked.places);
    expect(lines).toHaveLength(places.length);
    expect(lines.map(({ given }) => given)).toEqual(places.map(({ given }) => given ?? ''));
    expect(lines.map(({ outcome }) => outcome)).toEqual(places.map(({ outcome }) => outcome));
    expect(lines.find(({ prompt }) => prompt === 'mul-2-3' || prompt?.startsWith('mul-'))?.['asked']).toMatch(
      /^\d+ × \d+$/,
    );
  });
});

// Against the runtime's own reading of ISO 8601.
it('a moment with its offset is read back as the same moment', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 4_000_000_000 }),
      fc.integer({ min: -720, max: 840 }),
      (atS, offset) => {
        expect(Date.parse(isoTime(atS * 1000, offset))).toBe(atS * 1000);
      },
    ),
  );
  expect(isoTime(Date.parse('2026-11-25T08:05:00Z'), 60)).toBe('2026-11-25T09:05:00+01:00');
  expect(isoTime(Date.parse('2026-11-25T08:05:00Z'), -210)).toBe('2026-11-25T04:35:00-03:30');
});
