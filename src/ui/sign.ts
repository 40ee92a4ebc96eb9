import type { Operation } from '../core/fact/fact';

/** The sign a fact is written with: true minus and times, not hyphen and x. */
export const signOf: Readonly<Record<Operation, string>> = { add: '+', sub: '−', mul: '×', div: '÷' };
