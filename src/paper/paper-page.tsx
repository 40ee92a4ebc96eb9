import './paper.css';
import type { ComponentChildren } from 'preact';
import { type PaperSize, paperSizes } from './paper-size';

export interface PaperPageProps {
  readonly size: PaperSize;
  /** What the page is, for its looks. */
  readonly kind: string;
  readonly children: ComponentChildren;
}

/** One page, as large on paper as it says. */
export function PaperPage({ size, kind, children }: PaperPageProps) {
  const { widthMm, heightMm } = paperSizes[size];
  return (
    <section
      class={`paper-page ${kind}`}
      // A hair lower than the paper: rounded up, it would run over onto a page of its own.
      style={{ width: `${widthMm}mm`, height: `${heightMm - 0.1}mm` }}
    >
      {children}
    </section>
  );
}
