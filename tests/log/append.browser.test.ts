import { expect, test } from 'vitest';
import { compareStamps, recordVersion } from '../../src/core/record/stamp';
import { append } from '../../src/log/append';
import { allRecords, readHistory } from '../../src/log/lots';
import { latestDay, readHistoryOf, readHousehold, readTail } from '../../src/log/reads';
import { ann, bo, countingPorts, dump, freshName, householdOf, openFresh, satDraft } from './open-a-log';

test('records come back as they were appended, stamped in their order', async () => {
  const log = await openFresh();
  const made = await append(log, [ann, bo]);
  expect(made.map(({ seq }) => seq)).toEqual([1, 2]);
  expect(made[0]).toMatchObject({ ...ann, v: recordVersion, device: log.device });
  expect(await readHousehold(log)).toEqual(made);
});

test('a log opened again has what was in it, the same device and the counter', async () => {
  const name = freshName();
  const first = await openFresh(name);
  const made = await append(first, [ann]);
  const again = await openFresh(name);
  expect(again.device).toBe(first.device);
  expect(await readHousehold(again)).toEqual(made);
  expect((await append(again, [bo]))[0]?.seq).toBe(2);
});

test('two tabs appending at once never give the same counter twice', async () => {
  const name = freshName();
  const here = await openFresh(name);
  const there = await openFresh(name);
  const rounds = Array.from({ length: 40 }, (_, index) => append(index % 2 ? there : here, [ann, bo]));
  const made = (await Promise.all(rounds)).flat();
  expect(new Set(made.map(({ seq }) => seq)).size).toBe(80);
  expect(Math.max(...made.map(({ seq }) => seq))).toBe(80);
  expect(await readHousehold(here)).toEqual(made.toSorted(compareStamps));
});

test('reading the household touches no history, and its order is the log’s', async () => {
  const log = await openFresh();
  for (let round = 0; round < 12; round++) await append(log, [ann, satDraft('ann', '2026-03-02')]);
  const home = await readHousehold(log);
  expect(home).toHaveLength(12);
  expect(home).toEqual(home.toSorted(compareStamps));
  expect(home.every(({ kind }) => kind === 'childAdded')).toBe(true);
});

test('a spoken check is read with the household, for ever after', async () => {
  const name = freshName();
  const log = await openFresh(name);
  const answers = [{ fact: 'mul-7-8', came: 'right' }] as const;
  await append(log, [ann, { kind: 'spokenChecked', child: 'ann', day: '2026-03-02', answers }]);
  expect((await householdOf(await openFresh(name))).children[0]?.spoken).toEqual([
    { day: '2026-03-02', answers },
  ]);
});

test('a tail begins at its day and is of one child', async () => {
  const log = await openFresh();
  await append(log, [
    satDraft('ann', '2026-02-27'),
    satDraft('ann', '2026-03-02'),
    satDraft('ann', '2026-03-03'),
    satDraft('ann-2', '2026-03-03'),
    satDraft('bo', '2026-03-03'),
  ]);
  const tail = await readTail(log, await householdOf(log), 'ann', '2026-03-02');
  expect(tail.map(({ child, day }) => [child, day])).toEqual([
    ['ann', '2026-03-02'],
    ['ann', '2026-03-03'],
  ]);
  expect(await readHistory(log)).toHaveLength(5);
  expect(await readHistoryOf(log, await householdOf(log), 'bo')).toHaveLength(1);
  expect(await allRecords(log)).toHaveLength(5);
});

test('what a ruling gave to another child is found with that child', async () => {
  const log = await openFresh();
  const [sat] = await append(log, [satDraft('ann', '2026-03-02'), satDraft('ann', '2026-03-02')]);
  const target = sat?.id ?? '';
  const ruling = { what: 'wrongChild', child: 'bo' } as const;
  await append(log, [{ kind: 'ruled', child: 'ann', target, targetDay: '2026-03-02', ruling }]);
  const household = await householdOf(log);
  expect(await readTail(log, household, 'bo', '2026-03-02')).toEqual([sat]);
  expect(await readTail(log, household, 'bo', '2026-03-03')).toEqual([]);
});

test('the latest day is told apart from a day before it', async () => {
  const log = await openFresh();
  expect(await latestDay(log, 'ann')).toBe(null);
  await append(log, [
    satDraft('ann', '2031-01-01'),
    satDraft('ann', '2026-03-02'),
    satDraft('bo', '2035-01-01'),
  ]);
  expect(await latestDay(log, 'ann')).toBe('2031-01-01');
});

test('a sitting of an earlier day than the last is kept, after it in the log’s order', async () => {
  const log = await openFresh();
  const made = await append(log, [satDraft('ann', '2026-03-09'), satDraft('ann', '2026-03-02')]);
  expect(await readHistory(log)).toEqual(made.toReversed());
  expect(made[1]?.seq).toBe(2);
});

test('what a child without times sat says nothing of the hour', async () => {
  const log = await openFresh();
  const startOfDay = Date.UTC(2026, 2, 2);
  const sat = satDraft('ann', '2026-03-02', { keepTimes: false, startedAt: startOfDay });
  expect((await append(log, [sat]))[0]?.at).toBe(startOfDay);
});

test('appending nothing writes nothing', async () => {
  const log = await openFresh();
  const before = await dump(log);
  expect(await append(log, [])).toEqual([]);
  expect(await dump(log)).toEqual(before);
});

test('another tab hears what was appended; this one does not', async () => {
  const name = freshName();
  const here = await openFresh(name);
  const there = await openFresh(name, countingPorts('there'));
  const own: unknown[] = [];
  here.news.listen((news) => own.push(news));
  const heard = new Promise((resolve) => there.news.listen(resolve));
  const made = await append(here, [ann]);
  expect(await heard).toEqual(made);
  expect(own).toEqual([]);
});
