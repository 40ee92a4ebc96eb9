import { noRulings, type SatRulings } from '../marking/sat-rulings';
import type { Ruled, Ruling } from '../record/household-record';
import type { Id } from '../record/stamp';
import type { Move } from './household';

/** What the rulings in force say, by the sitting they rule on. */
export interface FoldedRulings {
  readonly byTarget: ReadonlyMap<Id, SatRulings>;
  readonly moves: readonly Move[];
}

/** Folds the rulings in force, given in the log's order: of two that disagree the later holds. */
export function foldRulings(ruled: readonly Ruled[]): FoldedRulings {
  const byTarget = new Map<Id, SatRulings>();
  const moves = new Map<Id, Move>();
  for (const { target, child, targetDay, ruling } of ruled) {
    byTarget.set(target, withRuling(byTarget.get(target) ?? noRulings, ruling));
    if (ruling.what === 'wrongChild')
      moves.set(target, { target, from: child, day: targetDay, to: ruling.child });
  }
  return { byTarget, moves: [...moves.values()].filter(({ from, to }) => from !== to) };
}

function withRuling(rulings: SatRulings, ruling: Ruling): SatRulings {
  switch (ruling.what) {
    case 'accept':
      return { ...rulings, accepted: new Set(rulings.accepted).add(ruling.place) };
    case 'slip':
      return { ...rulings, slips: new Map(rulings.slips).set(ruling.place, ruling.slip) };
    case 'void':
      return { ...rulings, voided: true };
    case 'wrongChild':
      return { ...rulings, child: ruling.child };
    case 'notOwnWork':
      return { ...rulings, notOwnWork: true };
    case 'bandAnyway':
      return { ...rulings, bandAnyway: true };
    case 'rows':
      return { ...rulings, rows: ruling.rows };
    default:
      ruling satisfies never;
      return rulings;
  }
}
