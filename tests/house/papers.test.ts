import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { listFiles, root } from './sources';

const read = (file: string) => readFileSync(join(root, file), 'utf8');

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly scripts: Readonly<Record<string, string>>;
}
const manifest = JSON.parse(read('package.json')) as Manifest;
const dependencies = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });

test('the README gives every folder under src one line, and no line to a folder that is not there', () => {
  const folders = readdirSync(join(root, 'src'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  const told = [...read('README.md').matchAll(/^- `src\/([\w-]+)\/`: \S.+$/gm)]
    .map(([, name]) => name)
    .sort();
  expect(told).toEqual(folders);
});

test('the README speaks of no script that package.json lacks', () => {
  const papers = read('README.md') + read('DEVELOPERS.md');
  const named = [...papers.matchAll(/`npm (?:run )?([a-z]+)`/g)].map(([, name = '']) => name);
  expect(named.length).toBeGreaterThan(2);
  expect(named.filter((name) => !['ci', 'install', ...Object.keys(manifest.scripts)].includes(name))).toEqual(
    [],
  );
});

test('every dependency has its reason in DEVELOPERS.md, and every reason its dependency', () => {
  const told = [...read('DEVELOPERS.md').matchAll(/^\| `([@\w/.-]+)` \| \S.+\|$/gm)]
    .map(([, name]) => name)
    .sort();
  expect(told).toEqual(dependencies.map(([name]) => name).sort());
});

test('every dependency is pinned to one version', () => {
  expect(dependencies.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

test('the lock file names no place to download from', () => {
  expect(read('package-lock.json')).not.toMatch(/"resolved"|https?:\/\/[^"]*\.tgz/);
});

test('nothing committed names a registry, a machine or a folder of one', () => {
  const telling = new RegExp(
    [
      'registry\\.',
      'npmjs',
      'deb\\.debian',
      '/work/',
      '/root/',
      '/home/\\w',
      '/tmp/',
      'C:\\\\\\\\Users',
    ].join('|'),
  );
  const wrong = listFiles('.')
    .filter(
      (file) =>
        file !== 'tests/house/papers.test.ts' &&
        /\.(?:[cm]?[jt]sx?|json|md|html|css|svg|webmanifest)$/.test(file),
    )
    .flatMap((file) =>
      read(file)
        .split('\n')
        .filter((line) => telling.test(line))
        .map((line) => `${file}: ${line.trim().slice(0, 120)}`),
    );
  expect(wrong).toEqual([]);
});
