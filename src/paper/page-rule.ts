import { type PaperSize, paperSizes } from './paper-size';

/**
 * Tells the browser how large the paper is; without margins of its own it has no room to write in them. Gives the way
 * to take the word back. A sheet made by script, since one rule must hold for the whole print and the choice is the parent's.
 */
export function ruleThePage(page: Document, size: PaperSize): () => void {
  const { widthMm, heightMm } = paperSizes[size];
  const rule = new CSSStyleSheet();
  rule.replaceSync(`@page { size: ${widthMm}mm ${heightMm}mm; margin: 0; }`);
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, rule];
  return () => {
    page.adoptedStyleSheets = page.adoptedStyleSheets.filter((other) => other !== rule);
  };
}
