import { expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { writtenFact } from '../../../src/core/fact/written';
import { cellNumber, tableShape } from '../../../src/parent/fact-grid/table-shape';

const facts = (op: Operation, reach: 9 | 12 = 9) =>
  tableShape(op, reach)
    .facts.flat()
    .filter((fact) => fact !== null);

test('the grids hold every basic fact: 100, 100, 100 and 90, as counted in the design', () => {
  expect((['add', 'sub', 'mul', 'div'] as const).map((op) => facts(op).length)).toEqual([100, 100, 100, 90]);
  expect(
    new Set((['add', 'sub', 'mul', 'div'] as const).flatMap((op) => facts(op).map(({ id }) => id))).size,
  ).toBe(390);
});

test('up to the 12s there are 169 products and 156 quotients; sums stay at 9', () => {
  expect([facts('mul', 12).length, facts('div', 12).length, facts('add', 12).length]).toEqual([
    169, 156, 100,
  ]);
});

test('row 8 and column 5 meet in 8 + 5, 13 − 5, 8 × 5 and 40 ÷ 5', () => {
  const at = (op: Operation, column: number) => tableShape(op, 9).facts[8]?.[column] ?? null;
  const met = [at('add', 5), at('sub', 5), at('mul', 5), at('div', 4)];
  expect(met.map((fact) => fact && writtenFact(fact))).toEqual(['8 + 5', '13 − 5', '8 × 5', '40 ÷ 5']);
  expect(met.map((fact) => fact && cellNumber(fact))).toEqual([13, 13, 40, 40]);
});

test('every column’s head names the second number, and every row’s the first or the answer', () => {
  for (const op of ['add', 'sub', 'mul', 'div'] as const) {
    const shape = tableShape(op, 9);
    shape.facts.forEach((row, down) => {
      row.forEach((fact, over) => {
        expect(shape.columns[over]?.head.endsWith(` ${fact?.b}`)).toBe(true);
        const head = op === 'add' || op === 'mul' ? `${fact?.a}` : `= ${fact?.answer}`;
        expect(shape.rows[down]?.head).toBe(head);
      });
    });
  }
});
