import type { Stamp } from '../record/stamp';
import type { Household } from './household';

/**
 * Whether a record goes with a child deleted for good. A ruling of "wrong child" stays: it holds no more than ids and
 * a day, and without it an old file's sitting would be given back to whoever it was taken from.
 */
export function isGone(
  { childOf, tombstones }: Pick<Household, 'childOf' | 'tombstones'>,
  record: Stamp & { readonly kind: string },
): boolean {
  if (record.kind === 'ruled' && isMove(record)) return false;
  return tombstones.has(childOf(record) ?? '');
}

function isMove(record: object): boolean {
  if (!('ruling' in record)) return false;
  const { ruling } = record;
  return typeof ruling === 'object' && ruling !== null && 'what' in ruling && ruling.what === 'wrongChild';
}
