import type { History, RuledSat } from '../../core/household/history';
import type { Child, Household } from '../../core/household/household';
import { markSat } from '../../core/marking/mark-sat';
import type { Marked } from '../../core/marking/marked';
import { compareStamps, type Day, type Id } from '../../core/record/stamp';

/** A sitting as the parent reads it: marked only when it is looked at. */
export interface Entry extends RuledSat {
  readonly marked: Marked;
}

/** Every sitting of the children still here, newest first; `only` keeps one child's. */
export function bookOf(household: Household, history: History, only: Id | null = null): readonly Entry[] {
  const children = household.children.filter(({ id }) => only === null || id === only);
  return children
    .flatMap((child) => sittingsOf(history, child).map((ruled) => readEntry(ruled, child)))
    .sort((x, y) => (x.sat.day < y.sat.day ? 1 : x.sat.day > y.sat.day ? -1 : compareStamps(y.sat, x.sat)));
}

/** One sitting by its id; `null` when it is not among them. */
export function findEntry(household: Household, history: History, id: Id): Entry | null {
  for (const child of household.children) {
    const ruled = sittingsOf(history, child).find(({ sat }) => sat.id === id);
    if (ruled) return readEntry(ruled, child);
  }
  return null;
}

/** What hangs on a sheet: its extra rows and corrections, in the order they were sat. */
export function partsOf(household: Household, history: History, sheet: Id): readonly Entry[] {
  return household.children.flatMap((child) =>
    sittingsOf(history, child)
      .filter(({ sat }) => sat.of === sheet)
      .map((ruled) => readEntry(ruled, child)),
  );
}

function sittingsOf(history: History, child: Child): readonly RuledSat[] {
  return history.children.get(child.id)?.sittings ?? [];
}

function readEntry(ruled: RuledSat, child: Child): Entry {
  let marked: Marked | undefined;
  return {
    ...ruled,
    // Ten years of sittings are listed at once; only those on the screen are worth marking.
    get marked() {
      marked ??= markSat(ruled.sat, ruled.rulings, child.settings.limits);
      return marked;
    },
  };
}

/** Entries in their order, under their days. */
export function byDay(
  entries: readonly Entry[],
): readonly (readonly [day: Day, entries: readonly Entry[]])[] {
  const days = new Map<Day, Entry[]>();
  for (const entry of entries) {
    const onDay = days.get(entry.sat.day);
    if (onDay) onDay.push(entry);
    else days.set(entry.sat.day, [entry]);
  }
  return [...days];
}
