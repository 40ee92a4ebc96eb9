import { format } from 'date-fns';
import type { Log } from '../../log/log';
import { eachLot } from '../../log/lots';
import { openRecordWriter } from '../../record-file/record-file';

/** A file made and not given to anybody yet. */
export interface MadeFile {
  readonly file: File;
  readonly records: number;
}

/** From this size on, in bytes, a backup is packed: ten years of a large family come to a tenth of it. */
const packFrom = 40_000_000;

/** Writes every record into one file, as they stand at this moment. */
export async function makeBackup(log: Log): Promise<MadeFile> {
  const madeAt = log.ports.now();
  const writer = openRecordWriter(log.device, madeAt);
  const parts: Blob[] = [new Blob([writer.opening])];
  let records = 0;
  await eachLot(log, (lot) => {
    records += lot.length;
    // As blobs the browser may put them on the disk, which a list of texts would never be.
    parts.push(new Blob([writer.lines(lot)]));
  });
  const whole = new Blob([...parts, writer.closing], { type: 'application/json' });
  const name = `sumstitch-backup-${format(madeAt, 'yyyy-MM-dd')}.json`;
  if (whole.size < packFrom) return { file: new File([whole], name, { type: whole.type }), records };
  const packed = await new Response(whole.stream().pipeThrough(new CompressionStream('gzip'))).blob();
  return { file: new File([packed], `${name}.gz`, { type: 'application/gzip' }), records };
}
