import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { homeOf } from '../../../src/core/household/bring-back';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { isGone } from '../../../src/core/household/gone';
import { effectiveHistory } from '../../../src/core/household/history';
import { preferred } from '../../../src/core/household/order';
import { type Draft, isOfHistory, type LogRecord } from '../../../src/core/record/record';
import { asNewChild } from '../../../src/state/record-book/new-child-ids';
import { children, days, satOf } from './made-records';

/** What a device or a file holds, in an order of its own. */
type Held = readonly LogRecord[];

/** The union that a merge makes, in a few lines: what the store does is held against it in the log's tests. */
function unite(...held: readonly Held[]): Held {
  const byId = new Map<string, LogRecord>();
  for (const record of held.flat()) byId.set(record.id, preferred(byId.get(record.id) ?? record, record));
  const all = [...byId.values()].sort((x, y) => (x.id < y.id ? -1 : 1));
  const household = foldHousehold(homeOf(all));
  return all.filter((record) => !isGone(household, record));
}

/** One thing that happens on one of three devices. */
type Act =
  | { readonly does: 'add' | 'delete' | 'bringBack'; readonly on: number; readonly child: number }
  | { readonly does: 'sit'; readonly on: number; readonly child: number; readonly day: number }
  | { readonly does: 'move'; readonly on: number; readonly nth: number; readonly child: number }
  | { readonly does: 'undo'; readonly on: number; readonly nth: number }
  | { readonly does: 'save'; readonly on: number }
  | { readonly does: 'exchange'; readonly on: number; readonly from: number };

const on = fc.nat(2);
const child = fc.nat(children.length - 1);
const nth = fc.nat(30);
const act: fc.Arbitrary<Act> = fc.oneof(
  fc.record({ does: fc.constant('add' as const), on, child }),
  { weight: 4, arbitrary: fc.record({ does: fc.constant('sit' as const), on, child, day: fc.nat(4) }) },
  { weight: 4, arbitrary: fc.record({ does: fc.constant('move' as const), on, nth, child }) },
  { weight: 3, arbitrary: fc.record({ does: fc.constant('undo' as const), on, nth }) },
  fc.record({ does: fc.constant('delete' as const), on, child }),
  fc.record({ does: fc.constant('bringBack' as const), on, child }),
  { weight: 2, arbitrary: fc.record({ does: fc.constant('save' as const), on }) },
  { weight: 3, arbitrary: fc.record({ does: fc.constant('exchange' as const), on, from: on }) },
);

/** Lets the acts happen; gives what the devices hold at the end and every file saved on the way. */
async function live(acts: readonly Act[]): Promise<readonly Held[]> {
  const devices: Held[] = [[], [], []];
  const files: Held[] = [];
  let ids = 0;

  function record(device: number, draft: Draft): void {
    const held = devices[device] ?? [];
    const seq = 1 + held.reduce((highest, one) => Math.max(highest, one.seq), 0);
    ids += 1;
    const made = { ...draft, id: `id-${ids}`, v: 1, seq, device: `device-${device}`, at: ids } as LogRecord;
    devices[device] = unite(held, [made]);
  }

  for (const one of acts) {
    const held = devices[one.on] ?? [];
    switch (one.does) {
      case 'add':
        record(one.on, { kind: 'childAdded', child: nameOf(one.child), name: 'A name', edge: 1 });
        break;
      case 'delete':
        record(one.on, { kind: 'childDeleted', child: nameOf(one.child) });
        break;
      case 'sit': {
        const {
          id: _,
          v: _v,
          seq: _s,
          device: _d,
          at: _a,
          ...sat
        } = satOf(nameOf(one.child), days[one.day] ?? days[0], 1, [['mul-2-3', '6']]);
        record(one.on, sat);
        break;
      }
      case 'move': {
        const sats = held.flatMap((other) => (other.kind === 'sat' ? [other] : []));
        const sat = sats[one.nth % Math.max(1, sats.length)];
        if (!sat) break;
        const ruling = { what: 'wrongChild', child: nameOf(one.child) } as const;
        record(one.on, { kind: 'ruled', child: sat.child, target: sat.id, targetDay: sat.day, ruling });
        break;
      }
      case 'undo': {
        // As on the pages: only what is shown can be taken back, or put back, which takes back what took it back.
        const household = foldHousehold(homeOf(held));
        const rulings = new Set(household.rulings.map(({ record: { id } }) => id));
        const shown = held.filter((other) => rulings.has(decidedBy(other, held)));
        const target = shown[one.nth % Math.max(1, shown.length)];
        if (target) record(one.on, { kind: 'undone', target: target.id });
        break;
      }
      case 'save':
        files.push(held);
        break;
      case 'exchange':
        devices[one.on] = unite(held, devices[one.from] ?? []);
        break;
      case 'bringBack': {
        const household = foldHousehold(homeOf(held));
        const file = files.find((saved) => saved.some((other) => 'child' in other));
        if (!file || !household.tombstones.has(nameOf(one.child))) break;
        const both = foldHousehold(homeOf([...held, ...file]));
        devices[one.on] = unite(held, file, await asNewChild(nameOf(one.child), file, both));
        break;
      }
    }
  }
  return [...devices, ...files];
}

/** What an undoing speaks of in the end, however many stand between; any other record itself. */
function decidedBy(record: LogRecord, held: Held): string {
  const target = record.kind === 'undone' ? held.find(({ id }) => id === record.target) : undefined;
  return target ? decidedBy(target, held) : record.id;
}

function nameOf(child: number): string {
  return children[child] ?? children[0];
}

/** What everything on screen is a function of. */
function shown(held: Held) {
  const household = foldHousehold(homeOf(held));
  const history = effectiveHistory(held.filter(isOfHistory), household);
  return {
    children: household.children,
    rulings: household.rulings,
    tombstones: household.tombstones,
    history: new Map([...history.children].sort()),
  };
}

describe('the union of what devices and files hold, whatever was deleted, moved, taken back and brought back', () => {
  const lives = fc.array(act, { minLength: 10, maxLength: 60 });

  test('is the same in any order, in any grouping, and twice over', async () => {
    await fc.assert(
      fc.asyncProperty(lives, fc.infiniteStream(nth), async (acts, draws) => {
        const all = await live(acts);
        const draw = () => all[(draws.next().value ?? 0) % all.length] ?? [];
        for (let times = 0; times < 8; times += 1) {
          const [x, y, z] = [draw(), draw(), draw()];
          expect(unite(x, y)).toEqual(unite(y, x));
          expect(unite(unite(x, y), z)).toEqual(unite(x, unite(y, z)));
          expect(unite(x, x)).toEqual(unite(x));
          expect(shown(unite(unite(x, y), y))).toEqual(shown(unite(x, y)));
        }
      }),
      { numRuns: 200 },
    );
  });

  test('shows no child that was deleted, and nothing of it', async () => {
    await fc.assert(
      fc.asyncProperty(lives, async (acts) => {
        const whole = unite(...(await live(acts)));
        const { children: left, tombstones, history } = shown(whole);
        for (const gone of tombstones) {
          expect(left.map(({ id }) => id)).not.toContain(gone);
          expect(history.has(gone)).toBe(false);
        }
      }),
    );
  });
});
