import { expect, test } from 'vitest';
import { type CellName, cells } from '../readings/simulator/cells';
import { factLines, verdictLines } from '../readings/simulator/report';

const { RUNS = '1000' } = process.env;
const runs = Number(RUNS);
const all = Object.keys(cells) as CellName[];

/** Prints line by line, since a whole table takes minutes. */
function print(lines: Iterable<string>): void {
  for (const line of lines) process.stdout.write(`${line}\n`);
}

test('how often each verdict is right', () => {
  expect(runs).toBeGreaterThan(0);
  print(verdictLines(runs, 'drawn', all));
  print(verdictLines(runs, 'blocks', ['calm', 'slower ×1.5', 'less right −15', 'improving fast']));
});

test('how often a fact is called what it is not', () => {
  print(factLines(runs));
});
