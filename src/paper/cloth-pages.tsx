import { Length, type PiecePicture, pieceRows } from '../ui/piece';
import { clothGrid, layOutCloth } from './cloth-layout';
import { PaperPage } from './paper-page';
import { marginMm, type PaperSize, paperSizes } from './paper-size';
import { across, inPages } from './sheet-layout';
import { paperWords } from './words';

export interface ClothPagesProps {
  readonly name: string;
  readonly pieces: readonly PiecePicture[];
  readonly size: PaperSize;
}

const titleMm = 14;

/** The long cloth, cut into strips that stand side by side: the first piece at the head of the first. */
export function ClothPages({ name, pieces, size }: ClothPagesProps) {
  const freeMm = paperSizes[size].heightMm - 2 * marginMm - titleMm;
  const sideMm = freeMm / clothGrid.rows;
  const pages = inPages(layOutCloth(pieces, pieceRows), clothGrid.strips);
  return pages.map((strips, page) => (
    <PaperPage key={page} size={size} kind="a-cloth">
      <h2>{paperWords.cloth(name)}</h2>
      <div class="strips">
        {strips.map((parts, strip) => (
          <div key={strip} class="strip" style={{ width: `${across * sideMm}mm` }}>
            {parts.map(({ piece, from, rows }, at) => (
              <div key={at} style={{ height: `${rows * sideMm}mm` }}>
                <Length
                  piece={{ ...piece, places: piece.places.slice(from * across, (from + rows) * across) }}
                />
              </div>
            ))}
          </div>
        ))}
      </div>
    </PaperPage>
  ));
}
