import type { GateData, GateStore } from '../core/gate/gate-data';
import type { Log } from './log';
import { getOne, read, write } from './store';
import { LogTroubleError } from './trouble';

const gateKey = 'meta/gate';

/** The parent's gate, kept on this device only and in no backup. */
export function gateStore(log: Log): GateStore {
  return {
    async read() {
      const kept = await read(log.store, (store) => getOne<Partial<GateData>>(store, gateKey));
      if (!kept) return null;
      // Never taken for no gate at all: the next child at the screen could choose a PIN.
      if (kept.v !== 1 || !kept.pin || !kept.recovery) throw new LogTroubleError('later');
      return kept as GateData;
    },
    write: (data) =>
      write(log.store, (store) => {
        store.put(data, gateKey);
      }),
  };
}
