import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../src/ui/tokens.css', import.meta.url), 'utf8');
const [, light = '', dark = ''] = css.split(':root {');

function colour(name: string, block: string): string {
  const found =
    new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(block) ??
    new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(light);
  return found?.[1] ?? '';
}

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

describe('contrast by WCAG 2.2', () => {
  it('is 21 between black and white and 4.48 for #777 on white, as the standard has it', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  it.each([
    ['light', light],
    ['dark', dark],
  ])('is enough for text in %s surroundings (1.4.6: 7 to 1)', (_name, block) => {
    for (const ground of ['linen', 'linen-light', 'linen-deep']) {
      expect(contrast(colour('ink', block), colour(ground, block)), ground).toBeGreaterThanOrEqual(7);
    }
    for (const ground of ['linen', 'linen-light']) {
      expect(contrast(colour('ink-soft', block), colour(ground, block)), ground).toBeGreaterThanOrEqual(7);
    }
  });

  it.each([
    ['light', light],
    ['dark', dark],
  ])('is enough for a thread’s outline in %s surroundings (1.4.11: 3 to 1)', (_name, block) => {
    for (const dye of ['indigo', 'woad', 'weld', 'moss', 'heather', 'walnut', 'madder']) {
      expect(
        contrast(colour(`${dye}-deep`, block), colour('linen-light', block)),
        dye,
      ).toBeGreaterThanOrEqual(3);
    }
  });
});
