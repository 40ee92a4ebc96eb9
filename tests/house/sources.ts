import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { parseSync } from 'vite';

export const root = join(import.meta.dirname, '../..');
const src = join(root, 'src');

export interface Import {
  /** As written: a relative path or a package. */
  readonly target: string;
  /** The file in the project, from the root; null for a package. */
  readonly file: string | null;
  /** `types` are erased by the compiler, `later` is fetched when asked for, `now` comes with the importer. */
  readonly when: 'now' | 'later' | 'types';
}

export interface Source {
  /** From the root: `src/core/fact/fact.ts`. */
  readonly file: string;
  /** The folder under `src`, or `main` for the file that joins them. */
  readonly part: string;
  readonly text: string;
  readonly imports: readonly Import[];
}

/** Every script under `src`, with what it imports. */
export function readSources(): readonly Source[] {
  return listFiles('src')
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => {
      const text = readFileSync(join(root, file), 'utf8');
      return { file, part: partOf(file), text, imports: readImports(file, text) };
    });
}

/** The files in a folder and below it, from the root, in order; nothing that is installed, built or git's own. */
export function listFiles(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter(({ name }) => !['node_modules', 'dist', 'dist-command', '.git'].includes(name))
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? listFiles(path) : [path];
    })
    .sort();
}

/** The folder under `src` that a file belongs to; the files right under it are `main`. */
export function partOf(file: string): string {
  const [first = '', second] = relative(src, join(root, file)).split('/');
  return second === undefined ? 'main' : first;
}

/** What a script's text imports, statically or later, by name or for its effects. */
export function readImports(file: string, text: string): readonly Import[] {
  const { module, errors } = parseSync(file, text);
  if (errors.length > 0) throw new Error(`${file} cannot be parsed.`);
  const found = (target: string, when: Import['when']): Import => ({
    target,
    file: resolve(file, target),
    when,
  });
  return [
    ...module.staticImports.map(({ moduleRequest, entries }) =>
      found(moduleRequest.value, entries.length > 0 && entries.every((e) => e.isType) ? 'types' : 'now'),
    ),
    ...module.staticExports.flatMap(({ entries }) =>
      entries.flatMap(({ moduleRequest, isType }) =>
        moduleRequest ? [found(moduleRequest.value, isType ? 'types' : 'now')] : [],
      ),
    ),
    ...module.dynamicImports.map(({ moduleRequest }) => {
      const written = text.slice(moduleRequest.start, moduleRequest.end);
      if (!/^(['"]).*\1$/.test(written))
        throw new Error(`${file} imports ${written}, which nothing can follow.`);
      return found(written.slice(1, -1), 'later');
    }),
  ];
}

function resolve(from: string, target: string): string | null {
  if (!target.startsWith('.')) return null;
  const [path = ''] = join(root, dirname(from), target).split('?');
  const candidates = [path, `${path}.ts`, `${path}.tsx`];
  // A file that is not there is the compiler's to report; its part is plain from its path.
  return relative(root, candidates.find((one) => /\.\w+$/.test(one) && existsSync(one)) ?? path);
}
