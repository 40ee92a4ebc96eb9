import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, noHistory } from '../../src/core/household/history';
import type { Draft, LogRecord } from '../../src/core/record/record';
import { resumeSummary, summarize } from '../../src/core/summary/summarize';
import { emptySummary, type Summary } from '../../src/core/summary/summary';
import { append } from '../../src/log/append';
import { readTailWithCheckpoint, refreshCheckpoint } from '../../src/log/checkpoint';
import { deleteChild } from '../../src/log/delete-child';
import { sealJournal } from '../../src/log/journal';
import type { Log } from '../../src/log/log';
import { readHistory } from '../../src/log/lots';
import { mergeRecords } from '../../src/log/merge';
import { readHousehold } from '../../src/log/reads';
import { anyLog, children, satOf } from '../core/household/made-records';
import { ann, countingPorts, dump, freshName, householdOf, openFresh, satDraft } from './open-a-log';

async function bothWays(
  log: Log,
  child: string,
): Promise<{ short: Summary; whole: Summary; reaches: string | null }> {
  const household = foldHousehold(await readHousehold(log));
  const { checkpoint, tail } = await readTailWithCheckpoint(log, household, child);
  const own = (records: typeof tail) =>
    (effectiveHistory(records, household).children.get(child) ?? noHistory).sittings;
  return {
    short: resumeSummary(checkpoint?.summary ?? emptySummary, own(tail)),
    whole: summarize(own(await readHistory(log))),
    reaches: checkpoint?.before ?? null,
  };
}

/** Whatever each step was, the summary read the short way is that of the whole history. */
async function expectSame(log: Log): Promise<void> {
  for (const child of children) {
    const { short, whole } = await bothWays(log, child);
    expect(short).toEqual(whole);
  }
}

async function refreshAll(log: Log): Promise<void> {
  for (const child of children) await refreshCheckpoint(log, child, 1);
}

type Way = 'merge' | 'append';

test('the short way and the whole way agree after every kind of write, on any log', async () => {
  let reached = 0;
  const parts = fc.tuple(
    anyLog,
    fc.integer({ min: 1, max: 4 }),
    fc.constantFrom<Way>('merge', 'append', 'append'),
  );
  await fc.assert(
    fc.asyncProperty(parts, async ([made, pieces, way]) => {
      const log = await openFresh(freshName(), countingPorts('x'));
      const ids = new Map<string, string>();
      const records: readonly LogRecord[] = [...made.history, ...made.home];
      const size = Math.ceil(records.length / pieces);
      for (let from = 0; from < records.length; from += size) {
        for (const record of records.slice(from, from + size)) {
          await writeBy(way, log, record, ids);
        }
        await expectSame(log);
        await refreshAll(log);
        await expectSame(log);
      }
      for (const child of children) if ((await bothWays(log, child)).reaches !== null) reached++;
    }),
    { numRuns: 60 },
  );
  // Otherwise the law would have been tried on logs without any checkpoint.
  expect(reached).toBeGreaterThan(10);
}, 60_000);

/** Writes a record as the app would: what it aims at is found under the id the log gave it. */
async function writeBy(way: Way, log: Log, record: LogRecord, ids: Map<string, string>): Promise<void> {
  if (record.kind === 'childDeleted') await deleteChild(log, record.child);
  else if (way === 'merge') await mergeRecords(log, [record]);
  else if (record.kind === 'sat') await sealJournal(log, record.id, record);
  else {
    const { id, v: _v, seq: _seq, device: _device, at: _at, ...draft } = record;
    const aimed = 'target' in draft ? { ...draft, target: ids.get(draft.target) ?? draft.target } : draft;
    const [made] = await append(log, [aimed as Draft]);
    ids.set(id, made?.id ?? '');
  }
}

describe('a checkpoint', () => {
  const dayOf = (index: number) => new Date(Date.UTC(2026, 2, 1 + index)).toISOString().slice(0, 10);

  async function logOfDays(count: number, child = 'ann'): Promise<Log> {
    const log = await openFresh();
    const sats = Array.from({ length: count }, (_, index) => satDraft(child, dayOf(index)));
    await append(log, [ann, ...sats]);
    return log;
  }

  const reach = async (log: Log) => (await bothWays(log, 'ann')).reaches;

  test('is made once the tail has more than twenty days, and leaves ten', async () => {
    const short = await logOfDays(20);
    await refreshCheckpoint(short, 'ann');
    expect(await reach(short)).toBe(null);
    const long = await logOfDays(25);
    await refreshCheckpoint(long, 'ann');
    expect(await reach(long)).toBe(dayOf(15));
    const { tail } = await readTailWithCheckpoint(long, await householdOf(long), 'ann');
    expect(tail.map(({ day }) => day)).toEqual(Array.from({ length: 10 }, (_, index) => dayOf(15 + index)));
    await expectSame(long);
  });

  test('sums up ten years bit by bit, and comes to the same', async () => {
    const log = await logOfDays(150);
    expect(await refreshCheckpoint(log, 'ann')).toBe(true);
    expect(await reach(log)).toBe(dayOf(60));
    expect(await refreshCheckpoint(log, 'ann')).toBe(true);
    expect(await refreshCheckpoint(log, 'ann')).toBe(false);
    expect(await reach(log)).toBe(dayOf(140));
    await expectSame(log);
  });

  test('outlives what touches only days behind it, and moves on', async () => {
    const log = await logOfDays(25);
    await refreshCheckpoint(log, 'ann');
    const latest = (await readHistory(log)).at(-1);
    const ruling = { what: 'void' } as const;
    await append(log, [
      satDraft('ann', dayOf(26)),
      { kind: 'ruled', child: 'ann', target: latest?.id ?? '', targetDay: dayOf(24), ruling },
      { kind: 'childSettingsChanged', child: 'ann', changes: { timed: true } },
    ]);
    expect(await reach(log)).toBe(dayOf(15));
    await expectSame(log);
    await append(
      log,
      Array.from({ length: 25 }, (_, index) => satDraft('ann', `2026-04-${10 + (index % 15)}`)),
    );
    await refreshCheckpoint(log, 'ann');
    expect(await reach(log)).toBe('2026-04-15');
    await expectSame(log);
  });

  test('sums up what a ruling gave to its child from another', async () => {
    const log = await logOfDays(25);
    const [given] = await append(log, [satDraft('bo', dayOf(3))]);
    const ruling = { what: 'wrongChild', child: 'ann' } as const;
    await append(log, [{ kind: 'ruled', child: 'bo', target: given?.id ?? '', targetDay: dayOf(3), ruling }]);
    await refreshCheckpoint(log, 'ann');
    expect(await reach(log)).toBe(dayOf(15));
    const { short, whole } = await bothWays(log, 'ann');
    expect(short).toEqual(whole);
    // One fact a sitting: its own 25 and the one given.
    expect(whole.facts.get('mul-2-3')?.seen).toBe(26);
  });

  test.each([
    ['a sitting of a day it has summed up', () => [satDraft('ann', dayOf(3))]],
    [
      'a ruling on one',
      (first: LogRecord) => [
        { kind: 'ruled', child: 'ann', target: first.id, targetDay: dayOf(0), ruling: { what: 'void' } },
      ],
    ],
    ['an undoing of whatever', () => [{ kind: 'undone', target: 'some-ruling' }]],
  ] as [string, (first: LogRecord) => Draft[]][])('is let go by %s', async (_, drafts) => {
    const log = await logOfDays(25);
    await refreshCheckpoint(log, 'ann');
    const [first] = await readHistory(log);
    if (!first) throw new Error('no history');
    await append(log, drafts(first));
    expect(await reach(log)).toBe(null);
    await expectSame(log);
  });

  test('is let go by a merge that brings anything, and kept by one that does not', async () => {
    const log = await logOfDays(25);
    await refreshCheckpoint(log, 'ann');
    await mergeRecords(log, await readHistory(log));
    expect(await reach(log)).toBe(dayOf(15));
    await mergeRecords(log, [satOf('ann', dayOf(2), 1, [['mul-2-4', '8']], { id: 'other' })]);
    expect(await reach(log)).toBe(null);
    await expectSame(log);
  });

  test('goes with its child', async () => {
    const log = await logOfDays(25);
    await refreshCheckpoint(log, 'ann');
    await deleteChild(log, 'ann');
    await refreshCheckpoint(log, 'ann');
    expect([...(await dump(log)).keys()].filter((key) => key.startsWith('checkpoint'))).toEqual([]);
  });

  test('of other rules than this build’s is not used', async () => {
    const log = await logOfDays(25);
    await refreshCheckpoint(log, 'ann');
    await log.store('readwrite', async (store) => {
      store.put({ v: '1.0', before: dayOf(15), summary: { finished: 999 } }, 'checkpoint/ann');
    });
    expect(await reach(log)).toBe(null);
    await expectSame(log);
  });

  test('a second tab’s ruling, made while this tab knew nothing of it, is in the checkpoint', async () => {
    const name = freshName();
    const here = await openFresh(name);
    const there = await openFresh(name);
    const days = Array.from({ length: 25 }, (_, index) => satDraft('ann', dayOf(index)));
    const [, first] = await append(here, [ann, ...days]);
    const ruled = append(there, [
      { kind: 'ruled', child: 'ann', target: first?.id ?? '', targetDay: dayOf(0), ruling: { what: 'void' } },
    ]);
    await Promise.all([ruled, refreshCheckpoint(here, 'ann')]);
    await expectSame(here);
  });
});
