import { expect, test } from 'vitest';
import { effectiveHistory } from '../../src/core/household/history';
import { append } from '../../src/log/append';
import { deleteChild } from '../../src/log/delete-child';
import { noteVisit, openJournals } from '../../src/log/journal';
import { readActiveChild, writeActiveChild } from '../../src/log/kiosk';
import { allRecords, readHistory } from '../../src/log/lots';
import { visit } from '../core/household/made-records';
import { ann, beginJournal, bo, dump, householdOf, openFresh, planOf, satDraft } from './open-a-log';

const day = '2026-03-02';

test('nothing of a deleted child is left but a tombstone without a name', async () => {
  const log = await openFresh();
  await append(log, [
    { kind: 'childAdded', child: 'ann', name: 'Annabel', edge: 1 },
    bo,
    { kind: 'childChanged', child: 'ann', name: 'Annie' },
    { kind: 'setStarted', child: 'ann', set: 'doubles' },
    { kind: 'factsTicked', child: 'ann', facts: ['mul-2-3'], known: true },
    { kind: 'childSettingsChanged', child: 'ann', changes: { length: 10 } },
    { kind: 'dayChanged', child: 'ann', day, change: { skip: true } },
    satDraft('ann', day),
    satDraft('bo', day),
  ]);
  const { plan, start } = planOf('ann', day);
  await noteVisit(log, await beginJournal(log, plan, start), 0, visit(0, '6'));
  const others = await beginJournal(log, { ...plan, child: 'bo' }, start);
  await writeActiveChild(log, 'ann');

  const tombstone = await deleteChild(log, 'ann');
  const left = await allRecords(log);
  expect(left.filter((record) => 'child' in record && record.child === 'ann')).toEqual([tombstone]);
  expect(Object.keys(tombstone).sort()).toEqual(['at', 'child', 'device', 'id', 'kind', 'seq', 'v']);
  expect(left).toHaveLength(3);
  expect((await openJournals(log)).map(({ id }) => id)).toEqual([others]);
  expect(await readActiveChild(log)).toBe(null);
  expect(JSON.stringify([...(await dump(log))])).not.toMatch(/Ann(abel|ie)/);
  expect((await householdOf(log)).children.map(({ id }) => id)).toEqual(['bo']);
});

test('a sitting follows the child it was ruled to belong to', async () => {
  const log = await openFresh();
  const [, , given, taken] = await append(log, [ann, bo, satDraft('ann', day), satDraft('bo', day)]);
  const moved = (target: string, from: string, to: string) =>
    ({
      kind: 'ruled',
      child: from,
      target,
      targetDay: day,
      ruling: { what: 'wrongChild', child: to },
    }) as const;
  await append(log, [moved(given?.id ?? '', 'ann', 'bo'), moved(taken?.id ?? '', 'bo', 'ann')]);
  await deleteChild(log, 'ann');
  const household = await householdOf(log);
  const history = effectiveHistory(await readHistory(log), household);
  expect(await readHistory(log)).toEqual([given]);
  expect(history.children.get('bo')?.sittings.map(({ sat }) => sat.id)).toEqual([given?.id]);
  expect(household.rulings.map(({ record }) => record.target)).toEqual([given?.id]);
});

test('what another tab appends for the child afterwards is not stored', async () => {
  const log = await openFresh();
  await append(log, [ann]);
  await deleteChild(log, 'ann');
  await append(log, [satDraft('ann', day), { kind: 'setStarted', child: 'ann', set: 'doubles' }, bo]);
  expect((await allRecords(log)).map(({ kind }) => kind)).toEqual(['childDeleted', 'childAdded']);
});

test('deleting twice leaves the child deleted', async () => {
  const log = await openFresh();
  await append(log, [ann, bo]);
  await deleteChild(log, 'ann');
  await deleteChild(log, 'ann');
  expect((await householdOf(log)).children.map(({ id }) => id)).toEqual(['bo']);
});
