import { describe, expect, test } from 'vitest';
import { paperSizeFor, paperSizes } from '../../src/paper/paper-size';

describe('the paper', () => {
  test('is as large as the standards say: ISO 216 A4 in mm, Letter 8.5 by 11 inches of 25.4 mm', () => {
    expect(paperSizes.a4).toEqual({ widthMm: 210, heightMm: 297 });
    expect(paperSizes.letter.widthMm).toBeCloseTo(8.5 * 25.4, 6);
    expect(paperSizes.letter.heightMm).toBeCloseTo(11 * 25.4, 6);
    // A sheet of A-paper halves into two of its own shape.
    expect(paperSizes.a4.heightMm / paperSizes.a4.widthMm).toBeCloseTo(Math.SQRT2, 2);
  });

  test('is what the parent chose, else what is sold where the language is at home', () => {
    expect(paperSizeFor('a4', 'en-US')).toBe('a4');
    expect(paperSizeFor('letter', 'de-DE')).toBe('letter');
    expect(['en-US', 'fr-CA', 'es-MX'].map((language) => paperSizeFor(null, language))).toEqual(
      Array(3).fill('letter'),
    );
    expect(['en-GB', 'de', 'fr-FR', ''].map((language) => paperSizeFor(null, language))).toEqual(
      Array(4).fill('a4'),
    );
  });
});
