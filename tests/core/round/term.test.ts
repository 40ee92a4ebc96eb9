import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { firstTryFacts } from '../../../src/core/first-try/first-try';
import { toTeach } from '../../../src/core/first-try/to-teach';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat } from '../../../src/core/record/sat';
import { planRound } from '../../../src/core/round/plan-round';
import { setById } from '../../../src/core/set/teaching-sets';
import { stepSummary } from '../../../src/core/summary/step-summary';
import { emptySummary, type Summary } from '../../../src/core/summary/summary';
import { satOf } from '../household/made-records';

const set = setById('times-8')?.facts ?? [];
const kept = setById('times-2')?.facts ?? [];
const ticked: ReadonlySet<FactId> = new Set(kept);
const dayOf = (index: number) => new Date(Date.UTC(2026, 0, 5 + index)).toISOString().slice(0, 10);

interface Morning {
  readonly taught: readonly FactId[];
  readonly cards: number;
  readonly left: number;
}

/**
 * Mornings of a child who keeps, of a day's new facts, the first `capacity`, and knew `before`: a first try, then each
 * day cards and a sheet over the whole set, through the real summary.
 */
function mornings(capacity: number, before: readonly FactId[], budgetMs: number): readonly Morning[] {
  let summary: Summary = emptySummary;
  let seq = 0;
  const known = new Set(before);
  const answer = (day: string, facts: readonly FactId[], over: Partial<Sat>, shown: ReadonlySet<number>) => {
    seq += 1;
    const sat = satOf(
      'ann',
      day,
      seq,
      facts.map((fact) => [fact, '0'] as const),
      over,
    );
    const places = facts.map((prompt, place) => ({
      prompt,
      outcome: known.has(prompt) || kept.includes(prompt) ? ('right' as const) : ('wrong' as const),
      shown: shown.has(place),
    }));
    summary = stepSummary(summary, { sat, child: 'ann', rulings: noRulings }, places);
  };
  const source = () => ({ facts: summary.facts, ticked });
  answer(dayOf(0), firstTryFacts(set, source(), 100, 1), { purpose: 'firstTry' }, new Set());
  return Array.from({ length: 15 }, (_, index) => {
    const day = dayOf(index);
    const round = planRound({
      ...{ today: day, set, kept, ticked, summary, fixedNew: null, budgetMs, mostCards: 250, cardMs: 4000 },
      seed: index,
    });
    const taught = round?.fresh ?? [];
    if (round) {
      // A card that is missed shows the whole fact and is answered then.
      const shownFirst = round.cards.flatMap(({ isNew }, place) => (isNew ? [place] : []));
      const facts = round.cards.map(({ fact }) => fact);
      const missed = facts.flatMap((fact, place) => (known.has(fact) || kept.includes(fact) ? [] : [place]));
      answer(day, facts, { purpose: 'cards', shownFirst }, new Set([...shownFirst, ...missed]));
    }
    // What was taught today is known from tomorrow on: a fact no longer held by the end of the sheet is another's test.
    answer(
      day,
      set.filter((fact) => !taught.includes(fact)),
      {},
      new Set(),
    );
    for (const fact of taught.slice(0, capacity)) known.add(fact);
    return { taught, cards: round?.cards.length ?? 0, left: toTeach(set, source()).length };
  });
}

describe('three weeks of card rounds', () => {
  const seven = 420_000;

  test('what the first try found is never taught, and everything else is', () => {
    const before = set.slice(0, 6);
    const days = mornings(4, before, seven);
    const taught = new Set(days.flatMap((day) => day.taught));
    expect([...taught].filter((fact) => before.includes(fact))).toEqual([]);
    const open = set.filter((fact) => !before.includes(fact) && !kept.includes(fact));
    expect(open.filter((fact) => !taught.has(fact))).toEqual([]);
    expect(days.at(-1)?.left).toBe(0);
  });

  test.each([2, 3, 4, 6])('a child who keeps %i a day has the set in due time', (capacity) => {
    const days = mornings(capacity, [], seven);
    const done = days.findIndex(({ left }) => left === 0);
    expect(done).toBeGreaterThan(0);
    expect(done).toBeLessThanOrEqual(Math.ceil(set.length / Math.min(capacity, 4)) + 3);
  });

  test('a fact that did not stay is taught again on a later day before any new one', () => {
    const days = mornings(2, [], seven);
    const [first, second, third] = days;
    const lost = first?.taught.slice(2) ?? [];
    expect(lost.length).toBeGreaterThan(0);
    // Asked unshown on the second day, it is seen to be lost, and leads on the third.
    expect(second?.taught.filter((fact) => lost.includes(fact))).toEqual([]);
    expect(third?.taught.slice(0, lost.length).toSorted()).toEqual(lost.toSorted());
  });

  test('no day goes over its time', () => {
    for (const budgetMs of [120_000, 300_000, seven]) {
      for (const { cards, taught } of mornings(4, [], budgetMs)) {
        expect(cards * 4000 + taught.length * 10_000).toBeLessThanOrEqual(budgetMs);
      }
    }
  });
});
