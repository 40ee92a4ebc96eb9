import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureInstalled, root } from './install.mjs';

const folder = join(root, 'dist-command');
const built = join(folder, 'read.mjs');
const parts = ['command', 'core', 'readings', 'record-file'].map((part) => join(root, 'src', part));

const [file] = process.argv.slice(2);
try {
  if (file === undefined) throw new Error('Say which file: npm run --silent read -- FILE');
  const text = readText(file);
  if (isStale()) {
    // Not to be run beside another command that installs: where there are tools, they will do.
    if (!existsSync(join(root, 'node_modules', 'vite'))) ensureInstalled();
    await buildCommand();
  }
  const { read } = await import(pathToFileURL(built).href);
  const answer = read(text);
  if ('reason' in answer) throw new Error(answer.reason);
  process.stdout.write(`${answer.document}\n`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

/** @param {string} path */
function readText(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    throw new Error(`There is no file ${path} that can be read.`);
  }
}

/** Whether a source is newer than what was built, which is built on demand. */
function isStale() {
  if (!existsSync(built)) return true;
  const builtMs = statSync(built).mtimeMs;
  return parts.some((part) =>
    readdirSync(part, { recursive: true, withFileTypes: true }).some(
      (entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs > builtMs,
    ),
  );
}

/** The readings are written in TypeScript, which the oldest Node supported does not run. */
async function buildCommand() {
  const { build } = await import('vite');
  await build({
    configFile: false,
    root,
    publicDir: false,
    logLevel: 'warn',
    build: {
      outDir: folder,
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      lib: { entry: join(root, 'src/command/read.ts'), formats: ['es'], fileName: () => 'read.mjs' },
    },
  });
}
