import { parseFact } from '../core/fact/fact';
import { writtenWhole } from '../core/fact/written';
import { codeOf } from '../core/paper/paper-code';
import { keyMm, packKeys } from './key-layout';
import { PaperPage } from './paper-page';
import type { PaperSize } from './paper-size';
import { rowsOf } from './sheet-layout';
import type { PrintedSheet } from './sheet-pages';
import { paperWords } from './words';

export interface KeyPagesProps {
  readonly sheets: readonly PrintedSheet[];
  readonly size: PaperSize;
}

/** The keys of some sheets, as many to a page as it holds, each fact where it stands on its sheet. */
export function KeyPages({ sheets, size }: KeyPagesProps) {
  return packKeys(sheets, size).map((page, at) => (
    <PaperPage key={at} size={size} kind="some-keys">
      <h2>{sheets.length === 1 ? paperWords.key : paperWords.keys}</h2>
      {page.map((sheet) => (
        <Key key={`${codeOf(sheet)} ${sheet.day}`} sheet={sheet} />
      ))}
    </PaperPage>
  ));
}

function Key({ sheet }: { readonly sheet: PrintedSheet }) {
  return (
    <section class="key">
      <h3 style={{ height: `${keyMm.head}mm` }}>
        <span>{`${sheet.name}, ${sheet.day}: ${sheet.setName}`}</span>
        <span class="paper-code">{codeOf(sheet)}</span>
      </h3>
      {rowsOf(sheet.facts).map((row, at) => (
        <div key={at} class="facts-row" style={{ height: `${keyMm.row}mm` }}>
          {row.map((id, place) => {
            const fact = parseFact(id);
            return (
              <span key={place} data-fact={id}>
                {fact && writtenWhole(fact)}
              </span>
            );
          })}
        </div>
      ))}
    </section>
  );
}
