import { signal } from '@preact/signals';
import type { SheetOnPaper } from './plan-prints';
import type { PaperPart } from './words';

/** Which part of the page is open, and sheets to be printed once more; kept outside the page, like the place. */
export const paperPlace = signal<{
  readonly part: PaperPart;
  readonly again: readonly SheetOnPaper[] | null;
}>({ part: 'result', again: null });
