import { foldHousehold } from '../core/household/fold-household';
import type { Household } from '../core/household/household';
import type { Id } from '../core/record/stamp';
import { readActiveChild } from '../log/kiosk';
import { isLog, type Log, openLog } from '../log/log';
import { readHousehold } from '../log/reads';
import { type LogTrouble, troubleOf } from '../log/trouble';
import type { Ports } from './ports';

/** What the first screen needs: the small part of the log, and whose turn it was. */
export interface First {
  readonly log: Log;
  readonly household: Household;
  readonly active: Id | null;
}

/** Opens the household kept under a database name; or says why that cannot be. */
export async function openFirst(ports: Ports, name?: string): Promise<First | LogTrouble> {
  const log = await openLog(ports, name);
  if (!isLog(log)) return log;
  try {
    const [records, active] = await Promise.all([readHousehold(log), readActiveChild(log)]);
    return { log, household: foldHousehold(records), active };
  } catch (error) {
    return troubleOf(error).trouble;
  }
}
