import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** What Chromium needs to run in a container, as root, without a word to anyone. */
export const CHROMIUM_FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The path of a Chromium: `CHROMIUM` if that is set, else the first one found on the PATH. */
export function findChromium() {
  const { CHROMIUM } = process.env;
  if (CHROMIUM) return CHROMIUM;
  for (const name of NAMES) {
    const path = findOnPath(name);
    if (path) return path;
  }
  return undefined;
}

/** Brings a Chromium from Debian's packages if there is none; throws a sentence a person can act on. */
export function ensureChromium() {
  const found = findChromium();
  if (found) return found;
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || !findOnPath('apt-get')) {
    throw new Error(
      'No Chromium was found, and it can only be installed here as root on Debian or a system like it.\n' +
        'Install Chromium by hand, or set CHROMIUM to the path of one, and run npm test again.',
    );
  }
  // Another apt may be at work on a fresh machine: wait for its lock rather than fail on it.
  const apt = ['-o', 'DPkg::Lock::Timeout=600', '-y', '-q'];
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', [...apt, 'update'], { env, stdio: ['ignore', 'ignore', 'pipe'] });
  execFileSync('apt-get', [...apt, 'install', '--no-install-recommends', 'chromium'], {
    env,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const installed = findChromium();
  if (!installed) throw new Error('Chromium was installed but is not on the PATH; set CHROMIUM to its path.');
  return installed;
}

/** @param {string} name */
function findOnPath(name) {
  const { PATH = '' } = process.env;
  return PATH.split(delimiter)
    .map((folder) => join(folder, name))
    .find(isExecutable);
}

/** @param {string} path */
function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
