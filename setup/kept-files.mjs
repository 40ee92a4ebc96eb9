import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const PLACE = '__BUILT__';

/**
 * A vite plugin that writes into the built service worker which files it is to keep, and a hash of their contents.
 * It reads the folder as written, so that files copied from `public` are there as well.
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
      const path = join(dir, worker);
      const code = readFileSync(path, 'utf8');
      // Registered as a classic script, it would not even start with an import.
      if (/^\s*(import|export)\b|\bimport\(/m.test(code)) throw new Error(`${worker} must stand alone.`);
      if (code.split(PLACE).length !== 2) throw new Error(`${worker} must name ${PLACE} exactly once.`);
      writeFileSync(
        path,
        code.replace(PLACE, () => JSON.stringify(listFiles(dir, worker))),
      );
    },
  };
}

/**
 * @param {string} dir
 * @param {string} worker
 */
function listFiles(dir, worker) {
  const files = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(dir.length + 1)
        .replaceAll('\\', '/'),
    )
    .filter((file) => file !== worker)
    .sort();
  const hash = createHash('sha256');
  for (const file of [worker, ...files]) hash.update(file).update(readFileSync(join(dir, file)));
  return { version: hash.digest('hex').slice(0, 16), files };
}
