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
  const ci = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  // By its path where npm told us: on some systems `npm` is a script that only a shell can start.
  const { npm_execpath: npm } = process.env;
  if (npm) run(process.execPath, [npm, ...ci]);
  else run('npm', ci);
  writeFileSync(stamp, hash);
}

/**
 * Runs a tool, by the path that npm sets for its scripts, and returns what it printed; throws with that if it fails.
 * @param {string} command
 * @param {readonly string[]} args
 */
export function run(command, args) {
  try {
    return execFileSync(command, args, {
      cwd: root,
      encoding: 'utf8',
      env: { ...process.env, NO_COLOR: '1' },
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
