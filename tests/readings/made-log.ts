import { type FactId, parseFact } from '../../src/core/fact/fact';
import { foldHousehold } from '../../src/core/household/fold-household';
import type { Child } from '../../src/core/household/household';
import { noRulings } from '../../src/core/marking/sat-rulings';
import type { Key, Sat, Visit } from '../../src/core/record/sat';
import { type ChildLog, readChildLog } from '../../src/readings/child-log/child-log';

/** What a child did on a card: right after so many ms, or the digits it gave, or a skip. */
export type Did = readonly [fact: FactId, firstKeyMs: number, given?: string | null];

const dayOf = (at: number): string => new Date(Date.UTC(2026, 0, 5 + at)).toISOString().slice(0, 10);

/** A sheet sat as listed, digits 200 ms apart, one card right after the other. */
export function sheetOf(at: number, did: readonly Did[], over: Partial<Sat> = {}): Sat {
  let atMs = 0;
  const bellMs = over.clock?.allowanceMs ?? Number.POSITIVE_INFINITY;
  const visits: Visit[] = [];
  for (const [place, [fact, firstKeyMs, given = String(parseFact(fact)?.answer)]] of did.entries()) {
    if (atMs > bellMs) break;
    const onsetMs = atMs;
    const digits = given === null ? [] : [...given];
    atMs += firstKeyMs;
    const keys = digits.map((digit, index) => [digit as Key, atMs + index * 200, 'touch'] as const);
    if (given !== null) atMs += (digits.length - 1) * 200 + 150;
    visits.push({
      place,
      onsetMs,
      onsetBy: 'element',
      keys: given === null ? [['skip', atMs, 'touch']] : [...keys, ['done', atMs, 'touch']],
      end: given === null ? 'skipped' : 'taken',
      endMs: atMs,
      given,
      took: given === null ? null : 'done',
      ...(atMs > bellMs && { afterBell: true }),
    });
  }
  return {
    id: `sheet-${at}`,
    v: 1,
    seq: at + 1,
    device: 'tablet',
    at: 0,
    kind: 'sat',
    child: 'wren',
    purpose: 'sheet',
    of: null,
    set: 'times-4',
    seed: 1,
    prompts: did.map(([fact]) => fact),
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: true,
    day: dayOf(at),
    offsetMin: 0,
    zone: 'UTC',
    startedAt: 0,
    clockStepMs: 0.1,
    isolated: true,
    visits,
    away: [],
    ended: visits.at(-1)?.afterBell ? 'bell' : 'finished',
    endedMs: atMs,
    ...over,
  };
}

/** A round of 30 copied numbers, each begun after so many ms. */
export function copiesAt(at: number, firstKeyMs: number): Sat {
  const numbers = Array.from({ length: 30 }, (_, index) => (index % 2 === 0 ? 2 + (index % 7) : 21 + index));
  let atMs = 0;
  const visits = numbers.map((number, place): Visit => {
    const onsetMs = atMs;
    const digits = [...String(number)];
    const keys = digits.map(
      (digit, index) => [digit as Key, atMs + firstKeyMs + index * 200, 'touch'] as const,
    );
    atMs += firstKeyMs + (digits.length - 1) * 200;
    const visit = { place, onsetMs, onsetBy: 'element', keys, end: 'taken', endMs: atMs } as const;
    atMs += 15;
    return { ...visit, given: String(number), took: 'itself' };
  });
  return {
    ...sheetOf(at, []),
    id: `copies-${at}`,
    purpose: 'practice',
    set: null,
    prompts: numbers.map((number) => `copy-${number}` as const),
    takesItself: true,
    visits,
    endedMs: atMs,
  };
}

/** A child as the household's fold makes it of its first record. */
export function childOf(id: string, name: string): Child {
  const added = {
    id: `added-${id}`,
    v: 1,
    seq: 0,
    device: 'tablet',
    at: 0,
    kind: 'childAdded',
    child: id,
  } as const;
  const [child] = foldHousehold([{ ...added, name, edge: 0 }]).children;
  if (!child) throw new Error('one child was added');
  return child;
}

const wren: Child = { ...childOf('wren', 'Wren'), currentSet: 'times-4' };

/** A child's log with `facts` as its current set, whatever the set is called. */
export function logOf(
  sats: readonly Sat[],
  facts: readonly FactId[],
  child: Partial<Child> = {},
  rulings: (sat: Sat) => typeof noRulings = () => noRulings,
): ChildLog {
  const sittings = sats.map((sat) => ({ sat, child: 'wren', rulings: rulings(sat) }));
  return readChildLog({ ...wren, ...child }, { sittings, changes: new Map(), printed: [] }, () => facts);
}
