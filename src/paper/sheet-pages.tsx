import { type Fact, type FactId, parseFact } from '../core/fact/fact';
import { signs } from '../core/fact/written';
import { codeOf, type PaperSheet } from '../core/paper/paper-code';
import { PaperPage } from './paper-page';
import type { PaperSize } from './paper-size';
import { layOutSheet } from './sheet-layout';
import { paperWords } from './words';

/** A sheet to be printed, with what its head says. */
export interface PrintedSheet extends PaperSheet {
  readonly facts: readonly FactId[];
  /** Whose sheet it is, and for which day, in words. */
  readonly name: string;
  readonly day: string;
  /** The set's name: on the key alone. */
  readonly setName: string;
}

export interface SheetPagesProps {
  readonly sheet: PrintedSheet;
  readonly size: PaperSize;
  /** A line for the child to write its own name on. */
  readonly hasNameLine: boolean;
}

/** A sheet: rows of five with room for the answers, its code small at the foot. */
export function SheetPages({ sheet, size, hasNameLine }: SheetPagesProps) {
  const { pages, rowMm, figureMm } = layOutSheet(sheet.facts, sheet.shape.layout, size);
  const code = codeOf(sheet);
  return (
    <>
      {pages.map((rows, page) => (
        <PaperPage key={page} size={size} kind="a-sheet">
          <header>
            {hasNameLine ? (
              <p class="name-line">
                {paperWords.name} <span />
              </p>
            ) : (
              <p>{sheet.name}</p>
            )}
            <p>{hasNameLine ? `${sheet.name}, ${sheet.day}` : sheet.day}</p>
          </header>
          <div class={`facts ${sheet.shape.layout}`} style={{ fontSize: `${figureMm}mm` }}>
            {rows.map((row, at) => (
              <div key={at} class="facts-row" style={{ height: `${rowMm}mm` }}>
                {row.map((id, place) => (
                  <Asked key={place} id={id} layout={sheet.shape.layout} />
                ))}
              </div>
            ))}
          </div>
          <footer>
            <span class="paper-code">{code}</span>
            {pages.length > 1 && <span>{paperWords.pageOf(page + 1, pages.length)}</span>}
          </footer>
        </PaperPage>
      ))}
    </>
  );
}

interface AskedProps {
  readonly id: FactId;
  readonly layout: PaperSheet['shape']['layout'];
}

function Asked({ id, layout }: AskedProps) {
  const fact = parseFact(id);
  if (!fact) return null;
  return (
    <div class="asked" data-fact={id}>
      {layout === 'stacked' ? <Stacked {...fact} /> : <Across {...fact} />}
    </div>
  );
}

function Across({ op, a, b }: Fact) {
  return (
    <>
      <span class="figures">{`${a} ${signs[op]} ${b} =`}</span>
      <span class="room" />
    </>
  );
}

function Stacked({ op, a, b }: Fact) {
  return (
    <>
      <span>{a}</span>
      <span class="under">
        <span>{signs[op]}</span> <span>{b}</span>
      </span>
      <span class="room" />
    </>
  );
}
