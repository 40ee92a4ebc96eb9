import { expect, test } from 'vitest';
import { append } from '../../src/log/append';
import { deleteChild } from '../../src/log/delete-child';
import { dropJournal, noteAway, noteVisit, openJournals, sealJournal } from '../../src/log/journal';
import { readHistory } from '../../src/log/lots';
import { visit } from '../core/household/made-records';
import { ann, beginJournal, dump, freshName, openFresh, planOf, satDraft } from './open-a-log';

const day = '2026-03-02';
const { plan, start } = planOf('ann', day);
const away = { why: 'hidden', fromMs: 4000, toMs: null, afterVisits: 2 } as const;

test('what was acknowledged is there when the page is opened again', async () => {
  const name = freshName();
  const log = await openFresh(name);
  const id = await beginJournal(log, plan, start);
  await noteVisit(log, id, 0, visit(0, '6'));
  await noteVisit(log, id, 1, visit(1, null));
  await noteAway(log, id, 0, away);
  const [open] = await openJournals(await openFresh(name));
  expect(open).toEqual({ id, plan, start, visits: [visit(0, '6'), visit(1, null)], away: [away] });
});

test('the same index again amends the visit', async () => {
  const log = await openFresh();
  const id = await beginJournal(log, plan, start);
  await noteVisit(log, id, 0, visit(0, '6'));
  await noteVisit(log, id, 0, { ...visit(0, '6'), late: 1 });
  await noteAway(log, id, 0, away);
  await noteAway(log, id, 0, { ...away, toMs: 9000 });
  const [open] = await openJournals(log);
  expect(open?.visits).toEqual([{ ...visit(0, '6'), late: 1 }]);
  expect(open?.away).toEqual([{ ...away, toMs: 9000 }]);
});

test('visits come back in their order past ten and a hundred', async () => {
  const log = await openFresh();
  const id = await beginJournal(log, plan, start);
  await Promise.all(Array.from({ length: 120 }, (_, place) => noteVisit(log, id, place, visit(place, '6'))));
  const [open] = await openJournals(log);
  expect(open?.visits.map(({ place }) => place)).toEqual(Array.from({ length: 120 }, (_, place) => place));
});

test('a visit after a hole was never acknowledged in order and is not taken', async () => {
  const log = await openFresh();
  const id = await beginJournal(log, plan, start);
  await noteVisit(log, id, 0, visit(0, '6'));
  await noteVisit(log, id, 2, visit(2, '6'));
  expect((await openJournals(log))[0]?.visits).toEqual([visit(0, '6')]);
});

test('two sittings open at once keep apart', async () => {
  const log = await openFresh();
  const first = await beginJournal(log, plan, start);
  const second = await beginJournal(log, { ...plan, child: 'bo' }, start);
  await noteVisit(log, second, 0, visit(0, '9'));
  const open = await openJournals(log);
  expect(open.map(({ id, visits }) => [id, visits.length]).sort()).toEqual(
    [
      [first, 0],
      [second, 1],
    ].sort(),
  );
});

test('sealing turns the journal into the record with its id', async () => {
  const log = await openFresh();
  await append(log, [ann]);
  const id = await beginJournal(log, plan, start);
  await noteVisit(log, id, 0, visit(0, '6'));
  const record = await sealJournal(log, id, satDraft('ann', day));
  expect(record).toMatchObject({ id, seq: 2, kind: 'sat' });
  expect(await openJournals(log)).toEqual([]);
  expect([...(await dump(log)).keys()].filter((key) => key.startsWith('journal'))).toEqual([]);
  expect(await readHistory(log)).toEqual([record]);
});

test('sealing twice gives the one record', async () => {
  const name = freshName();
  const log = await openFresh(name);
  const id = await beginJournal(log, plan, start);
  const [first, second] = await Promise.all([
    sealJournal(log, id, satDraft('ann', day)),
    sealJournal(await openFresh(name), id, satDraft('ann', day)),
  ]);
  expect(second).toEqual(first);
  expect(await readHistory(log)).toHaveLength(1);
});

test('a sitting whose journal could not be opened is kept all the same', async () => {
  const log = await openFresh();
  await sealJournal(log, 'never-opened', satDraft('ann', day));
  expect((await readHistory(log)).map(({ id }) => id)).toEqual(['never-opened']);
});

test('dropping a journal leaves the others and no record', async () => {
  const log = await openFresh();
  const kept = await beginJournal(log, plan, start);
  const dropped = await beginJournal(log, plan, start);
  await noteVisit(log, dropped, 0, visit(0, '6'));
  await dropJournal(log, dropped);
  expect((await openJournals(log)).map(({ id }) => id)).toEqual([kept]);
  expect(await readHistory(log)).toEqual([]);
});

test('a sitting sealed after its child was deleted stores nothing', async () => {
  const log = await openFresh();
  await append(log, [ann]);
  const id = await beginJournal(log, plan, start);
  await deleteChild(log, 'ann');
  await noteVisit(log, id, 0, visit(0, '6'));
  await sealJournal(log, id, satDraft('ann', day));
  expect(await readHistory(log)).toEqual([]);
  expect([...(await dump(log)).keys()].filter((key) => key.startsWith('journal'))).toEqual([]);
});
