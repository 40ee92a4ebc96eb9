import type { UseStore } from 'idb-keyval';
import type { Id } from '../core/record/stamp';
import { firstHead } from './head';
import { deviceKey, headKey } from './keys';
import { type News, openNews } from './news';
import { getOne, strictStore, write } from './store';
import { type LogTrouble, troubleOf } from './trouble';

/** What the log asks of the world outside. */
export interface LogPorts {
  /** A new id: letters, digits and hyphens. */
  randomId(): string;
  /** Wall clock, ms since 1970. */
  now(): number;
}

/** An open log. The functions beside this module read it and write to it. */
export interface Log {
  readonly name: string;
  /** This installation's id, stamped on its records. */
  readonly device: Id;
  readonly ports: LogPorts;
  readonly store: UseStore;
  readonly news: News;
}

/** The household's own database; the demo's has another name. */
export const homeName = 'sumstitch';

/** Opens a log, making it when it is not there; or says why that cannot be. */
export async function openLog(ports: LogPorts, name: string = homeName): Promise<Log | LogTrouble> {
  const store = strictStore(name);
  try {
    const device = await write(store, async (inside) => {
      const head = await getOne(inside, headKey);
      if (!head) inside.put(firstHead, headKey);
      const known = await getOne<Id>(inside, deviceKey);
      if (known !== undefined) return known;
      const made = ports.randomId();
      inside.put(made, deviceKey);
      return made;
    });
    return { name, device, ports, store, news: openNews(name) };
  } catch (error) {
    return troubleOf(error, true).trouble;
  }
}

export function isLog(opened: Log | LogTrouble): opened is Log {
  return 'store' in opened;
}
