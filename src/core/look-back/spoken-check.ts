import type { Fact, FactId } from '../fact/fact';
import { knownFact, pairOf } from '../fact/fact-list';
import { factStrength } from '../memory/fact-strength';
import { daysBetween } from '../memory/memory-strength';
import type { Day } from '../record/stamp';
import { makeDice } from '../sheet/dice';
import type { FactSummary, Summary } from '../summary/summary';

/** Why a fact is asked aloud, with its evidence. */
export type SpokenReason =
  /** Of its newest answers, at most three, so many were wrong or skipped. */
  | { readonly why: 'missed'; readonly wrong: number; readonly of: number }
  /** Not right at first try for so many days; `null` where it never was. */
  | { readonly why: 'faded'; readonly days: number | null }
  /** Right at first try on one or two days so far. */
  | { readonly why: 'young'; readonly rightDays: number };

export interface SpokenFact {
  readonly fact: FactId;
  readonly reason: SpokenReason;
}

/** What a spoken check is chosen from. */
export interface SpokenOrder {
  readonly today: Day;
  /** The facts of the current and of all kept sets. */
  readonly among: readonly FactId[];
  readonly facts: Summary['facts'];
  readonly seed: number;
}

/** Two to five facts (common practice, no source). */
const spokenCount = { least: 2, most: 5 } as const;

/** How many there are at most of each reason, and what counts as long not right, in days (our own decisions). */
const most = { missed: 2, faded: 2, young: 1 } as const;
const longDays = 14;

/**
 * The facts a parent asks aloud, and why: missed lately, long not right, still young, no two of one family; the most
 * faded make up the least number. Only facts the child has answered are asked. Empty where fewer than two can be.
 */
export function chooseSpoken(order: SpokenOrder): readonly SpokenFact[] {
  const { today, facts } = order;
  const met = makeDice(order.seed)
    .shuffled([...new Set(order.among)])
    .flatMap((id) => {
      const [fact, summary] = [knownFact(id), facts.get(id)];
      return fact && summary ? [{ fact, summary, strength: factStrength(summary, today) }] : [];
    })
    .sort((x, y) => (x.strength === y.strength ? 0 : x.strength - y.strength));

  const chosen: SpokenFact[] = [];
  const families = new Set<string>();
  const take = (reasonOf: (summary: FactSummary) => SpokenReason | null, count: number) => {
    let left = count;
    for (const { fact, summary } of met) {
      const reason = left > 0 && chosen.length < spokenCount.most ? reasonOf(summary) : null;
      if (!reason || families.has(familyName(fact))) continue;
      families.add(familyName(fact));
      chosen.push({ fact: fact.id, reason });
      left -= 1;
    }
  };
  take(missed, most.missed);
  take((summary) => faded(summary, today, longDays), most.faded);
  take(young, most.young);
  take((summary) => faded(summary, today, 0), spokenCount.least - chosen.length);
  return chosen.length < spokenCount.least ? [] : chosen;
}

function missed({ recent }: FactSummary): SpokenReason | null {
  const last = [...recent.slice(-3)];
  const wrong = last.filter((mark) => mark === '0').length;
  return wrong > 0 ? { why: 'missed', wrong, of: last.length } : null;
}

function faded({ lastRight }: FactSummary, today: Day, least: number): SpokenReason | null {
  const last = lastRight.at(-1);
  const days = last === undefined ? null : daysBetween(last, today);
  return days === null || days >= least ? { why: 'faded', days } : null;
}

function young({ rightDays }: FactSummary): SpokenReason | null {
  return rightDays === 1 || rightDays === 2 ? { why: 'young', rightDays } : null;
}

/** 7 × 8, 8 × 7, 56 ÷ 7 and 56 ÷ 8 are one family. */
function familyName(fact: Fact): string {
  const isSum = fact.op === 'add' || fact.op === 'sub';
  return `${isSum ? 'sum' : 'product'} ${pairOf(fact).toSorted((x, y) => x - y)}`;
}
