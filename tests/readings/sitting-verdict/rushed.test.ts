import { describe, expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { sentencesOfSheet } from '../../../src/readings/sentences/of-sheet';
import { say } from '../../../src/readings/sentences/say';
import { readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import { type Did, logOf, sheetOf } from '../made-log';
import { cells } from '../simulator/cells';
import { runOf } from '../simulator/run';

const facts = factsOf('mul')
  .filter(({ a, b }) => a > 1 && b > 1)
  .slice(0, 25)
  .map(({ id }) => id);

/** A sheet of 25: the first ones wrong at such times, the others right from 1.2 s on. */
const sheet = (at: number, wrongMs: readonly number[], rightMs = 1200) =>
  sheetOf(
    at,
    facts.map((fact: FactId, index): Did => {
      const ms = wrongMs[index];
      return ms === undefined ? [fact, rightMs + 12 * index] : [fact, ms, '1'];
    }),
  );

const last = (sheets: readonly ReturnType<typeof sheet>[]) => {
  const reading = readSittings(logOf(sheets, facts)).sittings.at(-1);
  if (!reading) throw new Error('there are sheets');
  return reading;
};
const isRushed = (sheets: readonly ReturnType<typeof sheet>[]) =>
  last(sheets).verdicts.some(({ name }) => name === 'rushed');

/** Days on which wrong answers came far sooner than right ones. */
const hurried = Array.from({ length: 7 }, (_, at) => sheet(at, [500, 520, 540, 560, 580]));

describe('a sheet is called rushed', () => {
  it('where four wrong answers come before all the right ones', () => {
    expect(isRushed([sheet(0, [700, 720, 740, 760])])).toBe(true);
  });

  it('where three do and the sheets before were rushed, and by themselves they are too few', () => {
    expect(isRushed([...hurried, sheet(7, [700, 720, 740])])).toBe(true);
    expect(isRushed([sheet(0, [700, 720, 740])])).toBe(false);
  });

  it('never for two wrong answers, nor for wrong ones that came no sooner, whatever the sheets before were', () => {
    expect(isRushed([...hurried, sheet(7, [700, 720])])).toBe(false);
    expect(isRushed([...hurried, sheet(7, [1290, 1300, 1310])])).toBe(false);
    expect(isRushed([...hurried, sheet(7, [1210, 1215, 1220, 1225])])).toBe(false);
  });

  it('never for one quick wrong answer among slow ones', () => {
    expect(isRushed([...hurried, sheet(7, [500, 1700, 1800])])).toBe(false);
  });
});

it('what is said of a rushed sheet shows it: the wrong answers’ seconds are the fewer as printed', () => {
  const readings = [11, 12, 13, 14, 15, 16].flatMap(
    (seed) => readSittings(runOf(cells.rushing, seed).log).sittings,
  );
  const told = readings
    .flatMap(sentencesOfSheet)
    .filter(({ kind }) => kind === 'rushedWrongQuicker')
    .map((sentence) => say(sentence, 'Teo').text);
  expect(told.length).toBeGreaterThan(20);
  for (const text of told) {
    const [wrong = Number.NaN, right = Number.NaN] = [
      ...text.matchAll(/(?:within|after) ([\d.]+)\u00a0s/g),
    ].map(([, s]) => Number(s));
    expect(wrong, text).toBeLessThan(right);
  }
});
