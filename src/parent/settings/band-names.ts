import { type Band, bands } from '../../core/marking/band';

export type BandNameFault = 'empty' | 'tooLong' | 'twice';

export type BandNames = Readonly<Record<Band, string>>;

const longestBandName = 16;

/** The four band names as typed: none empty, none twice, none past 16 signs. */
export function readBandNames(
  texts: BandNames,
):
  | { readonly ok: true; readonly names: BandNames }
  | { readonly ok: false; readonly faults: Partial<Record<Band, BandNameFault>> } {
  const faults: Partial<Record<Band, BandNameFault>> = {};
  const names: Record<Band, string> = { ...texts };
  for (const band of bands) {
    names[band] = texts[band].trim().replace(/\s+/g, ' ');
    const isTwice = bands.some(
      (other) => other !== band && texts[other].trim().toLowerCase() === names[band].toLowerCase(),
    );
    if (names[band] === '') faults[band] = 'empty';
    else if (Array.from(names[band]).length > longestBandName) faults[band] = 'tooLong';
    else if (isTwice) faults[band] = 'twice';
  }
  return Object.keys(faults).length > 0 ? { ok: false, faults } : { ok: true, names };
}
