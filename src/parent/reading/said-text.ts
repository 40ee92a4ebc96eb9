/** A sentence of the readings, and what it rests on in two lines. */
export interface SaidText {
  readonly text: string;
  readonly how: readonly string[];
}
