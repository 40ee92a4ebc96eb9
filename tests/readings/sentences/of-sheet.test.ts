import { describe, expect, it } from 'vitest';
import { sentencesOfSheet } from '../../../src/readings/sentences/of-sheet';
import { say } from '../../../src/readings/sentences/say';
import { readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import type { SittingReading } from '../../../src/readings/sitting-verdict/sitting-reading';
import type { Rushed } from '../../../src/readings/sitting-verdict/verdict';
import { cells } from '../simulator/cells';
import { runOf } from '../simulator/run';

const reading: SittingReading = {
  sitting: 's',
  day: '2026-01-05',
  timed: true,
  drawn: false,
  lookBack: false,
  length: 25,
  right: 14,
  rightByBell: 14,
  reached: 16,
  wrong: 1,
  accepted: 0,
  slips: 0,
  skipped: 0,
  band: 'loose',
  noBand: null,
  thinkS: 2.2,
  rows: { answers: 5, right: 5, thinkS: 2 },
  pausesInside: 1,
  gapsInside: 12,
  verdicts: [{ name: 'cannotTell', why: 'tooFew' }],
};
const kinds = (over: Partial<SittingReading>) =>
  sentencesOfSheet({ ...reading, ...over }).map(({ kind }) => kind);

describe('what is said of a sheet', () => {
  it('is the count, then the rows, then why', () => {
    expect(kinds({})).toEqual(['byBell', 'rows', 'tooFew']);
    expect(kinds({ timed: false, rows: null })).toEqual(['atEase', 'tooFew']);
  });

  it('stops at a ruling', () => {
    expect(kinds({ noBand: 'voided', verdicts: [] })).toEqual(['byBell', 'notCounted']);
    expect(kinds({ noBand: 'notOwnWork', verdicts: [] })).toEqual(['byBell', 'notCounted']);
  });

  it('leaves advice about the clock to a trial, and never gives two kinds of it', () => {
    const rushed: Rushed = {
      name: 'rushed',
      by: 'wrongQuicker',
      wrong: 5,
      of: 24,
      quickS: 0.8,
      otherS: 1.4,
      p: 0.0001,
      sheets: 8,
      leftS: 9,
      slips: 0,
    };
    const slow = { name: 'slowHands', mostAnswers: 18, needed: 15, keyedShare: 0.7, restoringS: 62 } as const;
    const said = (over: Partial<SittingReading>) =>
      sentencesOfSheet({ ...reading, ...over })
        .map((sentence) => say(sentence, 'Teo').text)
        .join(' ');
    expect(said({ verdicts: [rushed] })).toMatch(/Try a few days without the clock/);
    expect(said({ verdicts: [rushed], drawn: true })).not.toMatch(/Try/);
    expect(said({ verdicts: [slow] })).toMatch(/62\u00a0s would bring/);
    expect(said({ verdicts: [rushed, slow] })).not.toMatch(/would bring/);
  });

  it('speaks of pauses only where there are many', () => {
    expect(kinds({ pausesInside: 9 })).toContain('pauses');
    expect(kinds({ pausesInside: null })).not.toContain('pauses');
  });

  it('has one sentence for each verdict of made children of every kind, never “fine” beside a cause', () => {
    for (const make of Object.values(cells)) {
      for (const one of readSittings(runOf(make, 91).log).sittings) {
        const said = sentencesOfSheet(one).map(({ kind }) => kind);
        expect(new Set(said).size).toBe(said.length);
        const causes = said.filter((kind) => !['byBell', 'atEase', 'rows', 'pauses'].includes(kind));
        expect(causes).toHaveLength(one.verdicts.length);
        if (causes.includes('fine')) expect(causes).toEqual(['fine']);
      }
    }
  });
});
