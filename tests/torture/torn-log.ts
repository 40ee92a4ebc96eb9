import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const blockBytes = 32_768;
const headerBytes = 7;

/**
 * Whether a kill left half a record at the end of the log file that Chromium keeps for an origin (LevelDB's log format:
 * blocks of 32 KiB; checksum 4 bytes, length 2, type 1, then the record).
 */
export function isLogTorn(profile: string, port: number): boolean {
  const folder = join(profile, 'Default', 'IndexedDB', `http_127.0.0.1_${port}.indexeddb.leveldb`);
  if (!existsSync(folder)) return false;
  const logs = readdirSync(folder).filter((file) => file.endsWith('.log'));
  return logs.some((file) => endsInMidRecord(readFileSync(join(folder, file))));
}

function endsInMidRecord(log: Buffer): boolean {
  const first = 2;
  const middle = 3;
  let type = 0;
  for (let at = 0; at < log.length; ) {
    const left = blockBytes - (at % blockBytes);
    if (left < headerBytes) {
      at += left;
      continue;
    }
    if (log.length - at < headerBytes) return true;
    type = log.readUInt8(at + 6);
    at += headerBytes + log.readUInt16LE(at + 4);
    if (at > log.length) return true;
  }
  return type === first || type === middle;
}
