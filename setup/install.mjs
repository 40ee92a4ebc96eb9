import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const root = join(import.meta.dirname, '..');
const stamp = join(root, 'node_modules', '.lock-stamp');

/** Installs what the lock file names, unless that very lock file is installed already. */
export function ensureInstalled() {
  const hash = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hash) return;
  // An environment that says "production" would leave out the tools that build the app.
  run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error']);
  writeFileSync(stamp, hash);
}

/**
 * Runs a tool from node_modules or the PATH and returns what it printed; throws with that text if it fails.
 * @param {string} command
 * @param {readonly string[]} args
 */
export function run(command, args) {
  const { PATH = '', ...env } = process.env;
  try {
    return execFileSync(command, args, {
      cwd: root,
      encoding: 'utf8',
      env: { ...env, PATH: `${join(root, 'node_modules', '.bin')}:${PATH}`, NO_COLOR: '1' },
      maxBuffer: 64 * 1024 * 1024,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  } catch (error) {
    const {
      stdout = '',
      stderr = '',
      message,
    } = /** @type {import('node:child_process').SpawnSyncReturns<string> & Error} */ (error);
    throw new Error(`${stdout}${stderr}`.trim() || message);
  }
}
