import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBoat } from '../../../src/demo/make-boat';
import type { DocumentChild } from '../../../src/readings/document/document';
import { readHousehold } from '../../../src/readings/document/read-household';
import { anyLog, jumbled } from '../../core/household/made-records';

const { records } = makeBoat('2026-11-25', 7);
const document = readHousehold(records);
const child = (name: string): DocumentChild => {
  const found = document.children.find((one) => one.name === name);
  if (!found) throw new Error(`${name} is aboard`);
  return found;
};
const verdicts = (name: string) =>
  child(name)
    .sittings.filter(({ timed }) => timed)
    .map((sitting) => sitting.verdicts.map((verdict) => verdict.name));

describe('the readings of the boat answer the question each child poses', () => {
  it('Juniper knows her facts, and on days with the clock she is slower and less sure', () => {
    expect(
      verdicts('Juniper')
        .flat()
        .filter((name) => name === 'flustered').length,
    ).toBeGreaterThanOrEqual(3);
    expect(verdicts('Juniper').flat()).not.toContain('notKnown');
    expect(child('Juniper').clockEffect.time.claim).toBe('slower');
    const states = child('Juniper').facts.map(({ state }) => state);
    expect(states.filter((state) => state === 'toLearn' || state === 'uneven').length).toBeLessThan(6);
  });

  it('Teo’s low counts are hurry, not ignorance', () => {
    const given = verdicts('Teo');
    expect(given.filter((names) => names.includes('rushed')).length).toBeGreaterThan(given.length / 2);
    expect(given.flat()).not.toContain('flustered');
  });

  it('Wren comes to know sums she counted: some are quick by now, none is to learn', () => {
    const states = child('Wren').facts.map(({ state }) => state);
    expect(states).toContain('quick');
    expect(states).not.toContain('toLearn');
    expect(verdicts('Wren')).toEqual([]);
  });
});

describe('the document', () => {
  it('is plain JSON: nothing is lost in writing', () => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
  });

  it('has a sentence, verdicts and causes for every sheet, and a wrong answer’s cause for every miss', () => {
    for (const { sittings } of document.children) {
      for (const { sentence, verdicts: given, noBand, causes, wrong, skipped } of sittings) {
        expect(sentence).not.toBe('');
        const isOut = noBand === 'voided' || noBand === 'notOwnWork';
        expect(given.length === 0).toBe(isOut);
        if (!isOut) expect(causes).toHaveLength(wrong + skipped);
      }
    }
  });

  it('is the same whatever the order of the records, and of any log at all', () => {
    fc.assert(
      fc.property(
        anyLog.chain(({ home, history }) =>
          fc.tuple(fc.constant([...home, ...history]), jumbled([...home, ...history])),
        ),
        ([all, other]) => {
          expect(readHousehold(other)).toEqual(readHousehold(all));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('holds no child deleted for good', () => {
    const [{ child: gone } = { child: '' }] = document.children;
    const tombstone = { ...records[0], id: 'tomb', seq: 99_999, kind: 'childDeleted', child: gone } as never;
    const after = readHousehold([...records, tombstone]);
    expect(after.children.map((one) => one.child)).not.toContain(gone);
    expect(JSON.stringify(after)).not.toContain(gone);
  });
});
