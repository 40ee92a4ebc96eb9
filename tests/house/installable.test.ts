import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from './sources';

interface WebManifest {
  readonly name: string;
  readonly start_url: string;
  readonly scope: string;
  readonly display: string;
  readonly background_color: string;
  readonly theme_color: string;
  readonly icons: readonly {
    readonly src: string;
    readonly sizes: string;
    readonly type: string;
    readonly purpose?: string;
  }[];
}
const inPublic = (path: string) => join(root, 'public', path);
const manifest = JSON.parse(readFileSync(inPublic('manifest.webmanifest'), 'utf8')) as WebManifest;
const page = readFileSync(join(root, 'src/index.html'), 'utf8');

describe('the web manifest (W3C Web Application Manifest)', () => {
  test('opens at its own folder, wherever that is, and over the whole screen', () => {
    expect(manifest).toMatchObject({
      name: 'Sumstitch',
      start_url: './',
      scope: './',
      display: 'fullscreen',
    });
  });

  test('has the colour of the page before anything is painted', () => {
    const [, colour] = /<meta name="theme-color" content="([^"]+)"/.exec(page) ?? [];
    expect([manifest.theme_color, manifest.background_color]).toEqual([colour, colour]);
  });

  test('has an icon of 192, one of 512, and one that may be cut to a shape', () => {
    const pngs = manifest.icons.filter(({ type }) => type === 'image/png');
    expect(pngs.map(({ sizes, purpose = 'any' }) => `${sizes} ${purpose}`).sort()).toEqual([
      '192x192 any',
      '512x512 any',
      '512x512 maskable',
    ]);
  });

  test.each(manifest.icons.map((icon) => [icon.src, icon] as const))(
    '%s is there, of the size it claims',
    (src, icon) => {
      expect(existsSync(inPublic(src))).toBe(true);
      if (icon.type === 'image/png') expect(readPngSize(inPublic(src))).toBe(icon.sizes);
    },
  );
});

test('every fixed address that the page links to is there', () => {
  const links = [...page.matchAll(/<link [^>]*href="\/([^"]+)"/g)].map(([, path = '']) => path);
  expect(links.length).toBeGreaterThan(2);
  expect(links.filter((path) => !existsSync(inPublic(path)))).toEqual([]);
});

test('the page can be enlarged by whoever needs it', () => {
  expect(page).not.toMatch(/user-scalable|maximum-scale/);
});

// Width and height stand in the first chunk of a PNG, after its 8-byte signature (PNG specification, 11.2.2).
function readPngSize(path: string): string {
  const bytes = readFileSync(path);
  return `${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`;
}
