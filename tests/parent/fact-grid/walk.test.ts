import fc from 'fast-check';
import { expect, test } from 'vitest';
import { walk } from '../../../src/parent/fact-grid/walk';

const size = { rows: 10, columns: 9 };

test('arrows move by one, Home and End along the row, the page keys along the column', () => {
  const from = { row: 3, column: 4 };
  expect(walk('ArrowUp', from, size)).toEqual({ row: 2, column: 4 });
  expect(walk('ArrowDown', from, size)).toEqual({ row: 4, column: 4 });
  expect(walk('ArrowLeft', from, size)).toEqual({ row: 3, column: 3 });
  expect(walk('ArrowRight', from, size)).toEqual({ row: 3, column: 5 });
  expect(walk('Home', from, size)).toEqual({ row: 3, column: -1 });
  expect(walk('End', from, size)).toEqual({ row: 3, column: 8 });
  expect(walk('PageUp', from, size)).toEqual({ row: -1, column: 4 });
  expect(walk('PageDown', from, size)).toEqual({ row: 9, column: 4 });
});

test('other keys are left to the browser', () => {
  for (const key of [' ', 'Enter', 'Tab', 'a', '1'])
    expect(walk(key, { row: 0, column: 0 }, size)).toBeNull();
});

test('no walk leaves the grid and its heads', () => {
  const keys = fc.array(fc.constantFrom('ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'));
  fc.assert(
    fc.property(keys, (pressed) => {
      let at = { row: 0, column: 0 };
      for (const key of pressed) at = walk(key, at, size) ?? at;
      expect(at.row).toBeGreaterThanOrEqual(-1);
      expect(at.row).toBeLessThan(size.rows);
      expect(at.column).toBeGreaterThanOrEqual(-1);
      expect(at.column).toBeLessThan(size.columns);
    }),
  );
});
