import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';

const PLACE = '__BUILT__';

/**
 * A vite plugin that tells the built service worker what it is to keep.
 * @param {string} worker the worker's file name in the built folder
 * @returns {import('vite').Plugin}
 */
export function keptFiles(worker) {
  return {
    name: 'kept-files',
    apply: 'build',
    enforce: 'post',
    writeBundle({ dir }) {
      if (!dir) throw new Error('The service worker needs a folder of built files.');
      writeKeptFiles(dir, worker);
    },
  };
}

/**
 * Writes into the worker which files it is to keep, and a hash of all contents. It reads the folder as written, so
 * that files copied from `public` are there as well.
 * @param {string} dir
 * @param {string} worker
 */
export function writeKeptFiles(dir, worker) {
  const path = join(dir, worker);
  const code = readFileSync(path, 'utf8');
  // Registered as a classic script, it would not even start with an import.
  if (/^\s*(import|export)\b|\bimport\(/m.test(code)) throw new Error(`${worker} must stand alone.`);
  if (code.split(PLACE).length !== 2) throw new Error(`${worker} must name ${PLACE} exactly once.`);
  const files = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .filter((file) => file !== worker)
    .sort();
  const hash = createHash('sha256');
  for (const file of [worker, ...files]) hash.update(file).update(readFileSync(join(dir, file)));
  const built = JSON.stringify({ version: hash.digest('hex').slice(0, 16), files });
  writeFileSync(
    path,
    code.replace(PLACE, () => built),
  );
}
