import type { Child } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';

export type NameReading =
  | { readonly ok: true; readonly name: string }
  | { readonly ok: false; readonly fault: 'empty' | 'taken' | 'tooLong' };

const longestName = 30;

/** A child's name as typed: gaps trimmed, not empty, not another child's (in any case), not past 30 signs. */
export function readChildName(text: string, children: readonly Child[], self: Id | null): NameReading {
  const name = text.trim().replace(/\s+/g, ' ');
  if (name === '') return { ok: false, fault: 'empty' };
  if (Array.from(name).length > longestName) return { ok: false, fault: 'tooLong' };
  const isTaken = children.some((child) => child.id !== self && isSameName(child.name, name));
  return isTaken ? { ok: false, fault: 'taken' } : { ok: true, name };
}

function isSameName(x: string, y: string): boolean {
  return x.normalize('NFKC').toLocaleLowerCase() === y.normalize('NFKC').toLocaleLowerCase();
}
