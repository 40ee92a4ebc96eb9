import { foldHousehold } from '../../src/core/household/fold-household';
import type { Household } from '../../src/core/household/household';
import type { Draft } from '../../src/core/record/record';
import type { Sat, SittingPlan, SittingStart } from '../../src/core/record/sat';
import type { Id, Stamp } from '../../src/core/record/stamp';
import { openJournal } from '../../src/log/journal';
import { isLog, type Log, type LogPorts, openLog } from '../../src/log/log';
import { readHousehold } from '../../src/log/reads';
import { satOf } from '../core/household/made-records';

let opened = 0;

/** Ids and times that count up, so that a test can say what it expects. */
export function countingPorts(prefix: string): LogPorts {
  let ids = 0;
  let now = 1_700_000_000_000;
  return { randomId: () => `${prefix}-${++ids}`, now: () => ++now };
}

/** A database name no other test uses. */
export function freshName(): string {
  return `log-test-${Date.now()}-${++opened}`;
}

export async function openFresh(name = freshName(), ports = countingPorts(`t${++opened}`)): Promise<Log> {
  const log = await openLog(ports, name);
  if (!isLog(log)) throw new Error(`no log: ${log.what}`);
  return log;
}

export async function householdOf(log: Log): Promise<Household> {
  return foldHousehold(await readHousehold(log));
}

/** All that is stored, by key: what a test of "all or nothing" must look at. */
export function dump(log: Log): Promise<Map<string, unknown>> {
  return log.store('readonly', async (store) => {
    const keys = await wait(store.getAllKeys());
    const values = await wait(store.getAll());
    return new Map(keys.map((key, index) => [String(key), values[index]]));
  });
}

export function wait<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

export const ann: Draft = { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 1 };
export const bo: Draft = { kind: 'childAdded', child: 'bo', name: 'Bo', edge: 2 };

/** A sitting not yet stamped: one fact, answered right. */
export function satDraft(child: string, day: string, over: Partial<Sat> = {}): Omit<Sat, keyof Stamp> {
  const {
    id: _id,
    v: _v,
    seq: _seq,
    device: _device,
    at: _at,
    ...draft
  } = satOf(child, day, 1, [['mul-2-3', '6']], over);
  return draft;
}

/** The parts of a sitting that are fixed before its first card. */
export function planOf(child: string, day: string): { plan: SittingPlan; start: SittingStart } {
  const {
    kind: _kind,
    visits: _visits,
    away: _away,
    ended: _ended,
    endedMs: _endedMs,
    ...fixed
  } = satDraft(child, day);
  const { day: _, offsetMin, zone, startedAt, clockStepMs, isolated, ...plan } = fixed;
  return { plan, start: { day, offsetMin, zone, startedAt, clockStepMs, isolated } };
}

/** Opens a journal under a fresh id and gives the id. */
export async function beginJournal(log: Log, plan: SittingPlan, start: SittingStart): Promise<Id> {
  const id = log.ports.randomId();
  await openJournal(log, id, plan, start);
  return id;
}
