import { format } from 'date-fns';
import type { LogRecord } from '../core/record/record';
import type { Log } from '../log/log';
import { eachLot } from '../log/lots';
import { writeRecordFile } from '../record-file/record-file';

/** What is stored, as far as it can still be read, and what is only in memory, in one file of records. */
export async function heldFile(log: Log, inMemory: readonly LogRecord[]): Promise<File> {
  const records = new Map(inMemory.map((record) => [record.id, record]));
  const take = (lot: readonly LogRecord[]) => {
    for (const record of lot) records.set(record.id, record);
  };
  // A store that was erased or refuses gives nothing; then memory is all there is.
  await eachLot(log, take).catch(() => undefined);
  const madeAt = log.ports.now();
  const text = writeRecordFile(log.device, madeAt, [...records.values()]);
  return new File([text], `sumstitch-held-${format(madeAt, 'yyyy-MM-dd')}.json`, {
    type: 'application/json',
  });
}
