import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../src/core/fact/fact';
import { factsOf, operations } from '../../src/core/fact/fact-list';
import { cardGrid, cardMeasure, layOutCards } from '../../src/paper/card-layout';
import { clothGrid, layOutCloth } from '../../src/paper/cloth-layout';
import { keyMm, packKeys } from '../../src/paper/key-layout';
import { marginMm, type PaperSize, paperSizes } from '../../src/paper/paper-size';
import { footMm, headMm, layOutSheet } from '../../src/paper/sheet-layout';

const every = operations.flatMap((op) => factsOf(op, 12).map(({ id }) => id));
const size = fc.constantFrom<PaperSize>('a4', 'letter');
const sheet: fc.Arbitrary<FactId[]> = fc
  .integer({ min: 1, max: 20 })
  .chain((rows) => fc.array(fc.constantFrom(...every), { minLength: rows * 5, maxLength: rows * 5 }));

describe('a sheet on its pages', () => {
  test('holds every fact once, in order, in rows of five that fit the paper', () => {
    fc.assert(
      fc.property(sheet, fc.constantFrom('across', 'stacked'), size, (facts, layout, paper) => {
        const { pages, rowMm, columnMm } = layOutSheet(facts, layout, paper);
        expect(pages.flat(2)).toEqual(facts);
        expect(pages.flat().every((row) => row.length === 5)).toBe(true);
        const { widthMm, heightMm } = paperSizes[paper];
        for (const rows of pages)
          expect(rows.length * rowMm + headMm + footMm + 2 * marginMm).toBeLessThanOrEqual(heightMm + 1e-9);
        expect(5 * columnMm + 2 * marginMm).toBeCloseTo(widthMm, 6);
      }),
    );
  });

  test('of up to a hundred facts across fits one page, and the figures are no smaller than 12 points', () => {
    fc.assert(
      fc.property(sheet, size, (facts, paper) => {
        const { pages, figureMm } = layOutSheet(facts, 'across', paper);
        expect(pages).toHaveLength(1);
        expect(figureMm).toBeGreaterThanOrEqual((12 * 25.4) / 72);
      }),
    );
  });

  test('leaves room for an answer beside the widest fact', () => {
    for (const paper of ['a4', 'letter'] as const) {
      const { columnMm, figureMm } = layOutSheet(['div-132-12'], 'across', paper);
      // 132 ÷ 12 =: five digits of 0.63 em, two signs of 0.66 and three spaces of 0.25.
      expect(columnMm - figureMm * (5 * 0.63 + 2 * 0.66 + 3 * 0.25)).toBeGreaterThanOrEqual(12);
    }
  });
});

describe('flash cards', () => {
  test('have each answer behind its fact when the page is turned over its long edge', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 60 }), (cards) => {
        const sides = layOutCards(cards);
        expect(sides.flatMap(({ fronts }) => fronts.flat()).filter((card) => card !== null)).toEqual(cards);
        for (const { fronts, backs } of sides) {
          expect(fronts).toHaveLength(cardGrid.rows);
          for (const [row, front] of fronts.entries())
            for (const [column, card] of front.entries())
              expect(backs[row]?.[cardGrid.columns - 1 - column]).toBe(card);
        }
      }),
    );
  });

  test('stand in the middle of the paper, so that the mirrored columns meet', () => {
    for (const paper of ['a4', 'letter'] as const) {
      const { widthMm, heightMm, edgeMm } = cardMeasure(paper);
      expect(cardGrid.columns * widthMm + 2 * edgeMm).toBeCloseTo(paperSizes[paper].widthMm, 6);
      expect(cardGrid.rows * heightMm + 2 * edgeMm).toBeCloseTo(paperSizes[paper].heightMm, 6);
    }
  });
});

describe('keys', () => {
  test('keep their order, stay whole and fit the page', () => {
    const keys = fc.array(
      fc.integer({ min: 1, max: 20 }).map((rows) => ({ facts: Array.from({ length: rows * 5 }) })),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(keys, size, (all, paper) => {
        const pages = packKeys(all, paper);
        expect(pages.flat()).toEqual(all);
        for (const page of pages) {
          const tall = page.reduce(
            (sum, key) => sum + keyMm.head + (key.facts.length / 5) * keyMm.row + keyMm.gap,
            0,
          );
          expect(tall + 12 + 2 * marginMm).toBeLessThanOrEqual(paperSizes[paper].heightMm);
        }
      }),
    );
  });
});

describe('the long cloth', () => {
  test('is cut into strips of a page’s height with no row lost, and a piece may go on in the next', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 40 }), (pieces) => {
        const strips = layOutCloth(pieces, (rows) => rows);
        const cut = strips.flat();
        expect(cut.reduce((sum, { rows }) => sum + rows, 0)).toBe(
          pieces.reduce((sum, rows) => sum + rows, 0),
        );
        for (const strip of strips.slice(0, -1))
          expect(strip.reduce((sum, { rows }) => sum + rows, 0)).toBe(clothGrid.rows);
        for (const { piece, from, rows } of cut) expect(from + rows).toBeLessThanOrEqual(piece);
      }),
    );
  });
});
