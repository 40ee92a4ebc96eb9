import { describe, expect, test } from 'vitest';
import { arrows, lazy, packages } from './arrows';
import { partOf, readImports, readSources } from './sources';

const sources = readSources();

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
    const byFile = new Map(sources.map((source) => [source.file, source]));
    const next = (file: string) =>
      (byFile.get(file)?.imports ?? []).flatMap((one) => (one.file && one.when === 'now' ? [one.file] : []));
    const circles = sources.map(({ file }) => file).filter((file) => walk(next(file), next).has(file));
    expect(circles).toEqual([]);
  });
});

describe('the first load', () => {
  test('brings none of the parts that are fetched later', () => {
    const byFile = new Map(sources.map((source) => [source.file, source]));
    const next = (file: string) =>
      (byFile.get(file)?.imports ?? []).flatMap((one) => (one.file && one.when === 'now' ? [one.file] : []));
    const loaded = walk(['src/main.tsx'], next);
    expect([...loaded].filter((file) => lazy.includes(partOf(file)))).toEqual([]);
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
