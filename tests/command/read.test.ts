import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { read } from '../../src/command/read';
import { makeBoat } from '../../src/demo/make-boat';
import { readHousehold } from '../../src/readings/document/read-household';
import { writeRecordFile } from '../../src/record-file/record-file';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'read-'));
afterAll(() => rmSync(folder, { recursive: true }));

const { device, records } = makeBoat('2026-11-25', 3);
const text = writeRecordFile(device, 0, records);

const run = (...args: readonly string[]) =>
  promisify(execFile)(process.execPath, [join(root, 'setup', 'read.mjs'), ...args], { maxBuffer: 2 ** 26 });

describe('the command', () => {
  it('prints the readings of the records, as the pages read them', async () => {
    const file = join(folder, 'boat.json');
    writeFileSync(file, text);
    const { stdout, stderr } = await run(file);
    expect(stderr).toBe('');
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(readHousehold(records))));
  }, 60_000);

  it('says why there is none, and ends with a fault', async () => {
    const file = join(folder, 'half.json');
    writeFileSync(file, text.slice(0, 500));
    await expect(run(file)).rejects.toMatchObject({
      code: 1,
      stdout: '',
      stderr: expect.stringContaining('not whole'),
    });
    await expect(run(join(folder, 'none.json'))).rejects.toMatchObject({ code: 1 });
    await expect(run()).rejects.toMatchObject({ code: 1, stderr: expect.stringContaining('Say which file') });
  }, 60_000);

  it('reads the same without the shell', () => {
    const answer = read(text);
    expect('document' in answer && JSON.parse(answer.document).format).toBe('sumstitch-readings');
    expect(read('{}')).toEqual({ reason: 'This is not a file of Sumstitch records.' });
  });
});
