import type { BrowserContext, CDPSession, Page } from '../journeys/browser';

/** One thing done in a transaction, as the page asked for it. */
type Op =
  | { readonly put: string; readonly value: unknown }
  | { readonly cut: readonly [from: string, to: string] };

type Word =
  | { readonly nr: number; readonly op: Op }
  | { readonly nr: number; readonly ended: 'complete' | 'abort' };

/** All that a store holds, by key. */
export type Stored = Readonly<Record<string, unknown>>;

/** What a page is known to have written: every transaction it heard the end of, and those it had only begun. */
export interface Ledger {
  /** What must be found on the disk. */
  readonly acknowledged: () => Stored;
  /** Writes begun and not heard the end of, oldest first. */
  readonly inFlight: () => readonly (readonly Op[])[];
  /** Transactions acknowledged since the ledger was begun. */
  readonly count: () => number;
  /** Calls `act` when the next write is asked for. */
  readonly onNextWrite: (act: () => void) => void;
  /** Goes on from what was found on the disk. */
  readonly setTo: (stored: Stored) => void;
  readonly follow: (page: Page, cdp: CDPSession) => Promise<void>;
}

const binding = 'tortureTells';

/** Makes every page of a context say what it writes; before the page is opened. */
export function makePagesTell(context: BrowserContext): Promise<unknown> {
  return context.addInitScript(tellWrites, binding);
}

export function createLedger(): Ledger {
  let stored: Record<string, unknown> = {};
  let begun = new Map<number, Op[]>();
  let count = 0;
  let heard = () => {};

  function hear(word: Word): void {
    if ('op' in word) {
      begun.set(word.nr, [...(begun.get(word.nr) ?? []), word.op]);
      const act = heard;
      heard = () => {};
      act();
      return;
    }
    const ops = begun.get(word.nr) ?? [];
    begun.delete(word.nr);
    if (word.ended === 'abort' || ops.length === 0) return;
    count += 1;
    stored = applied(stored, ops);
  }

  return {
    acknowledged: () => stored,
    inFlight: () => [...begun].toSorted(([x], [y]) => x - y).map(([, ops]) => ops),
    count: () => count,
    onNextWrite: (act) => {
      heard = act;
    },
    setTo(found) {
      stored = { ...found };
      begun = new Map();
      heard = () => {};
    },
    async follow(_page, cdp) {
      cdp.on('Runtime.bindingCalled', ({ name, payload }) => {
        if (name === binding) hear(JSON.parse(payload));
      });
      await cdp.send('Runtime.enable');
      await cdp.send('Runtime.addBinding', { name: binding });
    },
  };
}

/** A store after a transaction. */
export function applied(stored: Stored, ops: readonly Op[]): Record<string, unknown> {
  let after: Record<string, unknown> = { ...stored };
  for (const op of ops) {
    if ('put' in op) after[op.put] = op.value;
    else {
      const [from, to] = op.cut;
      after = Object.fromEntries(
        Object.entries(after).filter(([key]) => key !== from && (key < from || key >= to)),
      );
    }
  }
  return after;
}

// Runs in the page. Transactions on one store end in the order they are made, so each is numbered when it is made.
function tellWrites(name: string): void {
  const base = Date.now() * 1000;
  let made = 0;
  const numbers = new WeakMap<IDBTransaction, number>();
  const tell = (word: unknown) => {
    const to: unknown = Reflect.get(globalThis, name);
    if (typeof to === 'function') to(JSON.stringify(word));
  };
  const begin = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...given) {
    const transaction = begin.apply(this, given);
    if (this.name !== 'sumstitch' || given[1] !== 'readwrite') return transaction;
    made += 1;
    const nr = base + made;
    numbers.set(transaction, nr);
    transaction.addEventListener('complete', () => tell({ nr, ended: 'complete' }));
    transaction.addEventListener('abort', () => tell({ nr, ended: 'abort' }));
    return transaction;
  };
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (...given) {
    const nr = numbers.get(this.transaction);
    if (nr !== undefined) tell({ nr, op: { put: String(given[1]), value: given[0] } });
    return put.apply(this, given);
  };
  const cut = IDBObjectStore.prototype.delete;
  IDBObjectStore.prototype.delete = function (range) {
    const nr = numbers.get(this.transaction);
    const ends = range instanceof IDBKeyRange ? [range.lower, range.upper] : [range, range];
    if (nr !== undefined) tell({ nr, op: { cut: ends } });
    return cut.call(this, range);
  };
}
