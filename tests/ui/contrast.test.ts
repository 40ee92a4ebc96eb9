import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { files } from '../house/css-files';

const sheet = (name: string) => readFileSync(new URL(`../../src/${name}`, import.meta.url), 'utf8');
const [, light = '', dark = ''] = sheet('ui/tokens.css').split(':root {');
const parents = sheet('parent/parent.css');
const surroundings = [
  ['light', [light]],
  ['dark', [dark, light]],
] as const;

type Blocks = readonly string[];

/** A colour as `#rrggbb`: a hex colour, or a token by its name, looked up in the first block that has it. */
function colour(name: string, blocks: Blocks): string {
  if (name === '#fff') return '#ffffff';
  if (name.startsWith('#')) return name;
  const found = [...blocks, parents]
    .map((block) => new RegExp(`--${name}: ([^;]+);`).exec(block)?.[1])
    .find((value) => value !== undefined);
  const mixed = /^color-mix\(in srgb, var\(--(.+)\) (\d+)%, white\)$/.exec(found ?? '');
  if (mixed) return withWhite(colour(mixed[1] ?? '', blocks), Number(mixed[2]) / 100);
  if (!found?.startsWith('#')) throw new Error(`no colour ${name}`);
  return found;
}

function channels(hex: string): readonly number[] {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
}

function withWhite(hex: string, share: number): string {
  const mixed = channels(hex).map((part) => Math.round(part * share + 255 * (1 - share)));
  return `#${mixed.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}

/** WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = channels(hex)
    .map((part) => part / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** WCAG 2.2, "contrast ratio". */
function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

/** What is drawn, and the grounds it is drawn on. */
type Pairs = Readonly<Record<string, readonly string[]>>;

const childText: Pairs = {
  ink: ['linen', 'linen-light', 'linen-deep'],
  // A button in ink, and the same pressed.
  'linen-light': ['ink', 'ink-soft'],
};

const parentText: Pairs = {
  ink: ['paper', '#fff', 'linen', 'mark'],
  'ink-soft': ['paper', '#fff', 'linen'],
  '#fff': ['indigo-deep'],
};

const dyes = ['indigo', 'woad', 'weld', 'moss', 'heather', 'walnut', 'madder'] as const;

/**
 * Shapes that say something. Not held to it: the darn under a mended stitch and the weave of a place not reached, which
 * ask nothing of anybody and should not stand out; hems, folds and grid lines, which only adorn.
 */
const childShapes: Pairs = {
  // The outline of the answer, the thread of the clock.
  indigo: ['linen', 'linen-light'],
  // The rim of a hole, the grown-ups' knot.
  walnut: ['linen', 'linen-light'],
  // The rims of keys, the places still to be worked.
  'linen-shade': ['linen', 'linen-light'],
  // A key pressed, the drawings.
  ink: ['linen', 'linen-light', 'linen-deep'],
  focus: ['linen', 'linen-light'],
  // Stitches and woven edges have the deep of their dye around them, loose ends are drawn in it.
  ...Object.fromEntries(dyes.map((dye) => [`${dye}-deep`, ['linen', 'linen-light']])),
};

const parentShapes: Pairs = {
  // Rims of fields and of facts not chosen.
  line: ['paper', '#fff', 'mark'],
  // A fact chosen, the page one is on.
  indigo: ['paper', '#fff', 'mark'],
  'indigo-deep': ['paper', '#fff', 'mark'],
  // Beside what went amiss.
  walnut: ['paper', '#fff'],
  // Marks and lines of charts.
  ink: ['paper', '#fff'],
  'ink-soft': ['paper', '#fff'],
  focus: ['paper', '#fff', 'linen'],
};

function tooFaint(pairs: Pairs, least: number, blocks: Blocks): readonly string[] {
  return Object.entries(pairs).flatMap(([front, grounds]) =>
    grounds
      .map((ground) => ({ ground, ratio: contrast(colour(front, blocks), colour(ground, blocks)) }))
      .filter(({ ratio }) => ratio < least)
      .map(({ ground, ratio }) => `${front} on ${ground}: ${ratio.toFixed(2)}`),
  );
}

test('contrast is 21 between black and white and 4.48 for #777 on white', () => {
  // The extremes: WCAG 2.2. The grey: w3c/wcag issue 200, on whether 4.48 may be rounded up to 4.5. It may not.
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

describe.each(surroundings)('in %s surroundings', (_name, blocks) => {
  it('a child’s text stands out 7 to 1 (WCAG 2.2, 1.4.6)', () => {
    expect(tooFaint(childText, 7, blocks)).toEqual([]);
  });

  it('a parent’s text stands out 4.5 to 1 (WCAG 2.2, 1.4.3)', () => {
    expect(tooFaint(parentText, 4.5, blocks)).toEqual([]);
  });

  it('a shape that says something stands out 3 to 1 (WCAG 2.2, 1.4.11)', () => {
    expect(tooFaint(childShapes, 3, blocks)).toEqual([]);
    expect(tooFaint(parentShapes, 3, blocks)).toEqual([]);
  });

  it('the threads of the linen take nothing of it from a child’s text', () => {
    expect(contrast(colour('ink', blocks), darkestLinen(blocks))).toBeGreaterThanOrEqual(7);
  });
});

describe('no style has text or ground of a colour not among these', () => {
  it.each([
    ['child', ['ui', 'child'], childText],
    ['parent', ['parent'], parentText],
  ] as const)('on the %s’s side', (_side, parts, pairs) => {
    const css = parts
      .flatMap(files)
      .map((file) => readFileSync(file, 'utf8'))
      .join('\n')
      .replaceAll(/@media (print|\(forced-colors: active\)) \{[\s\S]*?\n\}/g, '');
    const used = (property: string) => [
      ...new Set(
        [...css.matchAll(new RegExp(`[\\s;{]${property}: (?:var\\(--([\\w-]+)\\)|(#\\w+));`, 'g'))].map(
          ([, token, hex]) => token ?? hex ?? '',
        ),
      ),
    ];
    const [texts, grounds] = [used('color'), used('background(?:-color)?')];
    expect(texts).not.toEqual([]);
    expect(Object.keys(pairs)).toEqual(expect.arrayContaining(texts));
    // A ground that bears no text of its own may be the other colour of a pair.
    expect(Object.values(pairs).flat()).toEqual(expect.arrayContaining(grounds));
  });
});

/** Linen where all its threads cross: every layer of the weave over the ground. */
function darkestLinen(blocks: Blocks): string {
  const layers = ['weave', 'weave', 'slub', 'slub'].map((name) => {
    const found = new RegExp(`--${name}: rgb\\((\\d+) (\\d+) (\\d+) / ([\\d.]+)%\\);`).exec(light);
    if (!found) throw new Error(`no thread ${name}`);
    return found.slice(1).map(Number);
  });
  const woven = layers.reduce<readonly number[]>(
    (ground, [r = 0, g = 0, b = 0, percent = 0]) =>
      [r, g, b].map((part, at) => (part * percent + (ground[at] ?? 0) * (100 - percent)) / 100),
    channels(colour('linen', blocks)),
  );
  return `#${woven.map((part) => Math.round(part).toString(16).padStart(2, '0')).join('')}`;
}
