import { foldHousehold } from '../core/household/fold-household';
import type { Household } from '../core/household/household';
import type { HouseholdRecord } from '../core/record/household-record';
import { type Draft, isOfHistory, type LogRecord } from '../core/record/record';
import { type Id, recordVersion } from '../core/record/stamp';
import type { Chance } from './chance';

/** The log as it is made, one record after the other, all on one device. */
export interface BoatLog {
  readonly device: Id;
  readonly records: readonly LogRecord[];
  household(): Household;
  /** The draft as the record it would be; `atMs` is the wall clock. */
  stamp(draft: Draft, atMs: number): LogRecord;
  put(record: LogRecord): void;
  /** Stamps and puts. */
  add(draft: Draft, atMs: number): LogRecord;
}

export function createBoatLog(device: Id, chance: Chance): BoatLog {
  const records: LogRecord[] = [];
  const home: HouseholdRecord[] = [];
  let folded: Household | null = null;
  function stamp(draft: Draft, atMs: number): LogRecord {
    const seq = records.length + 1;
    // A spread of a union is not seen as one of its members.
    return { ...draft, id: chance.id(), v: recordVersion, seq, device, at: Math.round(atMs) } as LogRecord;
  }
  function put(record: LogRecord): void {
    records.push(record);
    if (isOfHistory(record)) return;
    home.push(record);
    folded = null;
  }
  return {
    device,
    records,
    stamp,
    put,
    household() {
      folded ??= foldHousehold(home);
      return folded;
    },
    add(draft, atMs) {
      const record = stamp(draft, atMs);
      put(record);
      return record;
    },
  };
}
