import { type FactId, parseFact } from '../core/fact/fact';
import { writtenFact } from '../core/fact/written';
import { cardMeasure, layOutCards } from './card-layout';
import { PaperPage } from './paper-page';
import type { PaperSize } from './paper-size';

export interface CardPagesProps {
  readonly facts: readonly FactId[];
  readonly size: PaperSize;
}

/** Flash cards to cut out: a page of facts, then the page of answers for its back. */
export function CardPages({ facts, size }: CardPagesProps) {
  return layOutCards(facts).flatMap(({ fronts, backs }, at) => [
    <Side key={`front ${at}`} rows={fronts} size={size} isFront />,
    <Side key={`back ${at}`} rows={backs} size={size} isFront={false} />,
  ]);
}

interface SideProps {
  readonly rows: readonly (readonly (FactId | null)[])[];
  readonly size: PaperSize;
  readonly isFront: boolean;
}

function Side({ rows, size, isFront }: SideProps) {
  const { widthMm, heightMm, edgeMm } = cardMeasure(size);
  return (
    <PaperPage size={size} kind={isFront ? 'card-fronts' : 'card-backs'}>
      <div class="cards" style={{ padding: `${edgeMm}mm` }}>
        {rows.map((row, at) => (
          <div key={at} class="cards-row" style={{ height: `${heightMm}mm` }}>
            {row.map((id, place) => {
              const fact = id && parseFact(id);
              return (
                <div
                  key={place}
                  class={fact ? 'a-card' : 'no-card'}
                  style={{ width: `${widthMm}mm` }}
                  {...(id ? { 'data-fact': id } : {})}
                >
                  {fact && (isFront ? writtenFact(fact) : fact.answer)}
                </div>
              );
            })}
          </div>
        ))}
      </div>
    </PaperPage>
  );
}
