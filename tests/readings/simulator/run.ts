import type { RuledSat } from '../../../src/core/household/history';
import type { Child } from '../../../src/core/household/household';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat, SittingPlan } from '../../../src/core/record/sat';
import { setById } from '../../../src/core/set/teaching-sets';
import { buildSheet } from '../../../src/core/sheet/build-sheet';
import { type ChildLog, readChildLog } from '../../../src/readings/child-log/child-log';
import { childOf } from '../made-log';
import { type Chance, makeChance } from './chance';
import type { MadeChild } from './made-child';
import { scriptOf } from './script';
import { sitFast } from './sit-fast';

/** In which order days with the clock come: one of each two drawn, or all those without before all those with. */
export type DayOrder = 'drawn' | 'blocks';

const sittingsOfKind = 8;
const allowanceMs = 45_000;
const copies = 24;

/** One run: a made child's eight sheets with the clock and eight without, after a round of numbers to copy. */
export function runOf(
  make: (chance: Chance) => MadeChild,
  seed: number,
  order: DayOrder = 'drawn',
): { readonly made: MadeChild; readonly log: ChildLog } {
  const chance = makeChance(seed);
  const made = make(chance);
  const met = new Map<string, number>();
  const sats: Sat[] = [sitFast(copyPlan, scriptOf(made, copyPlan, met, chance), { day: dayAt(0), nth: 0 })];
  for (const [at, timed] of kindsOf(order, chance).entries()) {
    const plan = sheetPlan(made, timed, seed * 100 + at, met);
    sats.push(sitFast(plan, scriptOf(made, plan, met, chance), { day: dayAt(at), nth: at + 1 }));
    for (const visit of sats.at(-1)?.visits ?? []) {
      const prompt = plan.prompts[visit.place] ?? '';
      met.set(prompt, (met.get(prompt) ?? 0) + 1);
    }
  }
  return { made, log: logOf(made, sats) };
}

/** The sittings as the readings take them. */
export function logOf(made: MadeChild, sats: readonly Sat[]): ChildLog {
  const sittings = sats.map((sat): RuledSat => ({ sat, child: 'made', rulings: noRulings }));
  const fresh = childOf('made', 'Made');
  const child: Child = {
    ...fresh,
    currentSet: made.set,
    ticked: new Set(made.kept),
    settings: { ...fresh.settings, timed: true },
  };
  return readChildLog(
    child,
    { sittings, changes: new Map(), printed: [] },
    (id) => setById(id)?.facts ?? null,
  );
}

function kindsOf(order: DayOrder, chance: Chance): readonly boolean[] {
  if (order === 'blocks') {
    return Array.from({ length: 2 * sittingsOfKind }, (_, at) => at >= sittingsOfKind);
  }
  return Array.from({ length: sittingsOfKind }, () => chance.shuffled([true, false])).flat();
}

export function sheetPlan(
  made: MadeChild,
  timed: boolean,
  seed: number,
  met: ReadonlyMap<string, number>,
): SittingPlan {
  const { facts } = buildSheet({
    set: made.setFacts,
    kept: made.kept.map((fact) => ({ fact, lastSeen: met.get(fact) ?? 0, weakness: 0.5 })),
    length: 25,
    keptShare: 0.2,
    seed,
    met: new Map(),
  });
  return {
    child: 'made',
    purpose: 'sheet',
    of: null,
    set: made.set,
    seed,
    prompts: facts,
    clock: timed ? { allowanceMs, sight: 'thread' } : null,
    takesItself: timed,
    onWrong: 'goOn',
    keepTimes: true,
  };
}

export const copyPlan: SittingPlan = {
  child: 'made',
  purpose: 'practice',
  of: null,
  set: null,
  seed: 0,
  prompts: Array.from(
    { length: copies },
    (_, at) => `copy-${at % 2 === 0 ? 2 + (at % 7) : 21 + ((at * 13) % 70)}` as const,
  ),
  clock: null,
  takesItself: true,
  onWrong: 'goOn',
  keepTimes: true,
};

/** School days only. */
export function dayAt(at: number): string {
  const date = new Date(Date.UTC(2026, 8, 7 + Math.floor(at / 5) * 7 + (at % 5)));
  return date.toISOString().slice(0, 10);
}
