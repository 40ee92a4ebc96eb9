import type { LogRecord } from '../../src/core/record/record';
import { readHousehold } from '../../src/readings/document/read-household';
import { yearsOf } from '../readings/simulator/ten-years';

const names = ['Ann', 'Ben', 'Cleo', 'Dov', 'Eve', 'Finn'] as const;

/** What a household of made children wrote in so many years of 180 school days: six children unless told otherwise. */
export function householdOf(years: number, children: number = names.length): readonly LogRecord[] {
  return names.slice(0, children).flatMap((name, at): LogRecord[] => {
    const child = `child-${at + 1}`;
    const stamp = { id: `added-${child}`, v: 1, seq: 0, device: 'tablet', at: 0 };
    const { made, sats } = yearsOf(at + 1, years);
    return [
      { ...stamp, kind: 'childAdded', child, name, edge: 0 },
      { ...stamp, id: `started-${child}`, seq: 1, kind: 'setStarted', child, set: made.set },
      ...sats.map((sat, nth): LogRecord => ({ ...sat, child, seq: nth + 2 })),
    ];
  });
}

/** How large the household is: sheets, extra rows, answers taken. */
export function sizeOf(records: readonly LogRecord[]) {
  const sats = records.flatMap((record) => (record.kind === 'sat' ? [record] : []));
  const answers = sats
    .filter(({ purpose }) => purpose !== 'practice')
    .flatMap(({ visits }) => visits.filter(({ end }) => end === 'taken'));
  const many = (purpose: string) => sats.filter((sat) => sat.purpose === purpose).length;
  return { sheets: many('sheet'), rows: many('row'), answers: answers.length };
}

/** What reads the whole household once and tells how long it took, ms. */
export function readerOf(made: readonly LogRecord[]): () => number {
  // As a store hands them out: no two records share a text.
  const records = structuredClone(made);
  return () => {
    const beganMs = performance.now();
    readHousehold(records);
    return performance.now() - beganMs;
  };
}
