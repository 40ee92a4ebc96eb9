import { describe, expect, test } from 'vitest';
import { arrows, lazyPackages, lazyParts, packages } from './arrows';
import { partOf, readImports, readSources } from './sources';

const sources = readSources();
const byFile = new Map(sources.map((source) => [source.file, source]));

describe('imports', () => {
  test('every part of src has its row in the table', () => {
    const parts = new Set(sources.map(({ part }) => part));
    expect([...parts].filter((part) => !(part in arrows && part in packages))).toEqual([]);
  });

  test('each part imports only from the parts that the table allows it', () => {
    const wrong = sources.flatMap(({ file, part, imports }) =>
      imports
        .flatMap((one) => (one.file?.startsWith('src/') ? [partOf(one.file)] : []))
        .filter((target) => target !== part && !arrows[part]?.includes(target))
        .map((target) => `${file} -> ${target}`),
    );
    expect(wrong).toEqual([]);
  });

  test('each part uses only the packages that the table allows it', () => {
    const wrong = sources.flatMap(({ file, part, imports }) =>
      imports
        .filter((one) => one.file === null)
        .map(({ target }) => packageOf(target))
        .filter((name) => !packages[part]?.includes(name))
        .map((name) => `${file} -> ${name}`),
    );
    expect(wrong).toEqual([]);
  });

  test('no arrow in the table leads back to where it began', () => {
    const ways = Object.keys(arrows).flatMap((part) => (reach(part).has(part) ? [part] : []));
    expect(ways).toEqual([]);
  });

  test('no file imports itself by way of others', () => {
    const circles = sources
      .map(({ file }) => file)
      .filter((file) => walk(importedNow(file), importedNow).has(file));
    expect(circles).toEqual([]);
  });
});

describe('the first load', () => {
  const loaded = walk(['src/main.tsx'], importedNow);

  test('brings none of the parts that are fetched when asked for', () => {
    expect([...loaded].filter((file) => lazyParts.includes(partOf(file)))).toEqual([]);
  });

  test('brings none of the packages that can wait', () => {
    const wrong = sources
      .filter(({ file }) => loaded.has(file))
      .flatMap(({ file, imports }) =>
        imports
          .filter(({ target, when }) => when === 'now' && lazyPackages.includes(packageOf(target)))
          .map(({ target }) => `${file} -> ${target}`),
      );
    expect(wrong).toEqual([]);
  });
});

describe('reading imports', () => {
  const read = (text: string) =>
    readImports('src/main.tsx', text).map(({ target, when }) => `${target} ${when}`);

  test('a type is erased, a value comes now, a call comes later', () => {
    expect(read("import type { A } from 'a';")).toEqual(['a types']);
    expect(read("import { type A, b } from 'a';")).toEqual(['a now']);
    expect(read("import 'a';")).toEqual(['a now']);
    expect(read("export * from 'a';")).toEqual(['a now']);
    expect(read("export const load = () => import('a');")).toEqual(['a later']);
  });

  test('an import by a computed name is refused', () => {
    expect(() => read('export const load = (name: string) => import(name);')).toThrow(/nothing can follow/);
  });
});

function importedNow(file: string): readonly string[] {
  const imports = byFile.get(file)?.imports ?? [];
  return imports.flatMap((one) => (one.file !== null && one.when === 'now' ? [one.file] : []));
}

function packageOf(target: string): string {
  return target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/');
}

function reach(part: string): ReadonlySet<string> {
  return walk(arrows[part] ?? [], (one) => arrows[one] ?? []);
}

function walk(from: readonly string[], next: (one: string) => readonly string[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [...from];
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (seen.has(one)) continue;
    seen.add(one);
    open.push(...next(one));
  }
  return seen;
}
