import { applied, type Ledger, type Stored } from './ledger';

/** What became of the writes after a fault. */
export interface Found {
  /** Acknowledged records that are not there or not as they were. */
  readonly lost: readonly string[];
  /** Signs of a transaction of which only a part is there. */
  readonly torn: readonly string[];
}

/**
 * Compares the disk with what was acknowledged: it must hold exactly that, or that and one or more of the writes in
 * flight, in their order. A page killed at once may not have told of its last write; then the parts must agree.
 */
export function judge(ledger: Ledger, stored: Stored): Found {
  let expected = ledger.acknowledged();
  if (isSame(expected, stored)) return { lost: [], torn: [] };
  for (const ops of ledger.inFlight()) {
    expected = applied(expected, ops);
    if (isSame(expected, stored)) return { lost: [], torn: [] };
  }
  return { lost: lostOf(ledger.acknowledged(), ledger, stored), torn: tornIn(stored) };
}

function lostOf(acknowledged: Stored, ledger: Ledger, stored: Stored): string[] {
  const changing = new Set<string>();
  for (const op of ledger.inFlight().flat()) {
    if ('put' in op) changing.add(op.put);
    else
      for (const key of Object.keys(acknowledged))
        if (key === op.cut[0] || (key >= op.cut[0] && key < op.cut[1])) changing.add(key);
  }
  return Object.keys(acknowledged).filter((key) => {
    if (changing.has(key) || key.startsWith('meta/') || key.startsWith('checkpoint/')) return false;
    if (asText(stored[key]) === asText(acknowledged[key])) return false;
    return !(key.startsWith('journal/') && isSealed(key, stored));
  });
}

function isSealed(key: string, stored: Stored): boolean {
  const [, id] = key.split('/');
  return Object.keys(stored).some((other) => other.startsWith('hist/') && other.endsWith(`-${id}`));
}

function tornIn(stored: Stored): string[] {
  const torn: string[] = [];
  const keys = Object.keys(stored);
  const head = stored['meta/head'] as { readonly seq: number } | undefined;
  const seqs = keys.filter((key) => /^(home|hist)\//.test(key)).map((key) => seqOf(stored[key]));
  if (head && Math.max(0, ...seqs) > head.seq) torn.push('a record beyond the counter');
  if (!head && keys.length > 0) torn.push('records without a head');
  for (const key of keys) {
    const [kind, id, what, index] = key.split('/');
    if (kind !== 'journal') continue;
    if (isSealed(key, stored)) torn.push(`${id} sealed and open`);
    if (!(`journal/${id}/head` in stored)) torn.push(`${key} without its sitting`);
    const before = String(Number(index) - 1).padStart(6, '0');
    if (index !== undefined && Number(index) > 0 && !(`journal/${id}/${what}/${before}` in stored))
      torn.push(`${key} without the one before`);
  }
  return torn;
}

function seqOf(record: unknown): number {
  return (record as { readonly seq?: number } | null)?.seq ?? 0;
}

function isSame(x: Stored, y: Stored): boolean {
  return asText(sorted(x)) === asText(sorted(y));
}

function sorted(stored: Stored): unknown {
  return Object.entries(stored).toSorted(([x], [y]) => (x < y ? -1 : 1));
}

/** As text with the keys of objects in order, which a structured clone need not keep. */
function asText(value: unknown): string {
  return JSON.stringify(value ?? null, (_, inner: unknown) =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).toSorted(([x], [y]) => (x < y ? -1 : 1)))
      : inner,
  );
}

/** What was being written, in a word for the table. */
export function kindOf(ledger: Ledger): string {
  const keys = ledger.inFlight().flatMap((ops) => ops.map((op) => ('put' in op ? op.put : op.cut[0])));
  if (keys.some((key) => key.startsWith('hist/'))) return 'sealing or a change of the day';
  if (keys.some((key) => /^journal\/.*\/visit\//.test(key))) return 'an answer';
  if (keys.some((key) => /^journal\/.*\/away\//.test(key))) return 'going away, coming back';
  if (keys.some((key) => key.startsWith('journal/'))) return 'a sitting begun or dropped';
  if (keys.some((key) => key.startsWith('home/'))) return 'a record of the parent';
  if (keys.some((key) => key === 'meta/gate')) return 'a PIN or a try';
  if (keys.some((key) => key === 'meta/kiosk')) return 'the child whose turn it is';
  return keys.length > 0 ? 'other' : 'nothing';
}
