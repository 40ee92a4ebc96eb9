import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { test } from 'vitest';
import { builtFolder } from '../journeys/browser';
import { tell } from './told';

const bytes = (file: string) => gzipSync(readFileSync(join(builtFolder, file)), { level: 9 }).length;
const isSound = (file: string) => /\.(mp3|webm)$/.test(file);
const isFont = (file: string) => file.endsWith('.woff2');
const isPicture = (file: string) => /\.(png|svg)$/.test(file);

/** A lazy part by the name of its file, its hash left out. */
const partOf = (file: string) => file.replace(/^assets\//, '').replace(/-[\w-]{8}(\.\w+)$/, '$1');

test('what is fetched, gzip', () => {
  const page = readFileSync(join(builtFolder, 'index.html'), 'utf8');
  const linked = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(
    ([, file]) => file ?? '',
  );
  const first = ['index.html', ...linked];
  const files = readdirSync(builtFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(builtFolder.length + 1));
  const sum = (some: readonly string[]) => some.reduce((total, file) => total + bytes(file), 0);
  const lazy = files.filter((file) => /\.(js|css)$/.test(file) && !first.includes(file));
  const figures = {
    'first load: page, style, script': sum(first),
    'everything but fonts, sounds and icons': sum(
      files.filter((file) => !isSound(file) && !isFont(file) && !isPicture(file)),
    ),
    icons: sum(files.filter(isPicture)),
    fonts: sum(files.filter(isFont)),
    sounds: sum(files.filter(isSound)),
    'the whole app': sum(files),
    ...Object.fromEntries(
      lazy
        .map((file) => [`lazy: ${partOf(file)}`, bytes(file)] as const)
        .toSorted(([, x], [, y]) => y - x)
        .slice(0, 20),
    ),
  };
  const rows = Object.entries(figures).map(
    ([what, size]) => [what, { kB: (size / 1000).toFixed(1) }] as const,
  );
  tell('weight', Object.fromEntries(rows), figures);
});
