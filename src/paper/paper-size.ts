/** The two sheets of paper homes have, in mm: ISO 216 A4, and US Letter of 8.5 by 11 inches. */
export const paperSizes = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;

export type PaperSize = keyof typeof paperSizes;

/** Kept free all round, mm: every home printer reaches that far. */
export const marginMm = 12;

/** Countries whose stationers sell Letter (Unicode CLDR, measurement data, `paperSize`: from memory). */
const letterLands: ReadonlySet<string> = new Set([
  'BZ',
  'CA',
  'CL',
  'CO',
  'CR',
  'GT',
  'MX',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'US',
  'VE',
]);

/** The size a parent chose, or the one sold where the device's language is at home. */
export function paperSizeFor(chosen: PaperSize | null, language: string): PaperSize {
  if (chosen) return chosen;
  const land = /-([A-Z]{2})\b/.exec(language)?.[1];
  return land !== undefined && letterLands.has(land) ? 'letter' : 'a4';
}
