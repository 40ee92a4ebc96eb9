import type { Fact } from '../fact/fact';
import type { Dice } from './dice';

/** Places between a fact and its next coming: at least three other cards stand between. */
export const apart = 4;

/** An order of cards, and where it had to give way. */
export interface Arrangement {
  readonly facts: readonly Fact[];
  /** How many cards follow their own fact within three cards. */
  readonly tooClose: number;
  /** How many cards follow a card with the same answer. */
  readonly alike: number;
}

/** The cards of one fact still to be laid, in the company of those with the same answer. */
interface Pile {
  readonly fact: Fact;
  readonly answer: { left: number };
  left: number;
  lastAt: number;
}

// Of 87,000 sheets of the teaching sets one in 27 took a second try and none more than six.
const mostTries = 40;

/** Lays cards in an order in which no fact comes again within three cards, and no answer twice running. */
export function arrange(cards: readonly Fact[], dice: Dice): Arrangement {
  const least = fewestAlike(cards);
  let best = layOnce(cards, dice);
  for (let tries = 1; tries < mostTries && (best.tooClose > 0 || best.alike > least); tries++) {
    const next = layOnce(cards, dice);
    if ((next.tooClose - best.tooClose || next.alike - best.alike) < 0) best = next;
  }
  return best;
}

/** How many cards must follow one with the same answer, however the cards lie. */
export function fewestAlike(cards: readonly Fact[]): number {
  const counts = new Map<number, number>();
  for (const { answer } of cards) counts.set(answer, (counts.get(answer) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  return Math.max(0, most - (cards.length - most) - 1);
}

function layOnce(cards: readonly Fact[], dice: Dice): Arrangement {
  const piles = pileUp(cards);
  const gap = Math.min(apart, piles.length);
  const facts: Fact[] = [];
  let tooClose = 0;
  let alike = 0;
  let before: Pile | null = null;
  for (let place = 0; place < cards.length; place++) {
    const pile: Pile | null = draw(piles, place, cards.length, gap, before, dice);
    if (!pile) break;
    if (place - pile.lastAt < apart) tooClose++;
    if (pile.answer === before?.answer) alike++;
    pile.left--;
    pile.answer.left--;
    pile.lastAt = place;
    facts.push(pile.fact);
    before = pile;
  }
  return { facts, tooClose, alike };
}

function pileUp(cards: readonly Fact[]): Pile[] {
  const piles = new Map<string, Pile>();
  const answers = new Map<number, { left: number }>();
  for (const fact of cards) {
    const answer = answers.get(fact.answer) ?? { left: 0 };
    answers.set(fact.answer, answer);
    answer.left++;
    const pile = piles.get(fact.id) ?? { fact, answer, left: 0, lastAt: Number.NEGATIVE_INFINITY };
    piles.set(fact.id, pile);
    pile.left++;
  }
  return [...piles.values()];
}

/** Draws the pile for one place: by chance, weighed by what is left, unless something must come now. */
function draw(
  piles: readonly Pile[],
  place: number,
  length: number,
  gap: number,
  before: Pile | null,
  dice: Dice,
): Pile | null {
  const half = Math.floor((length - place) / 2);
  // An answer that fills more than half of the places left must come now, or follow itself later.
  const isPressing = (pile: Pile) => pile.answer.left > half;
  const mayFollowItself = before !== null && isPressing(before);
  const urgency = (pile: Pile): number => {
    if (place - pile.lastAt < gap) return -1 - pile.lastAt;
    // Otherwise its cards, each `gap` places after the one before, would no longer fit: the rule that never gives.
    const late = pile.left > 1 && place + 1 + gap * (pile.left - 1) >= length ? 4 : 0;
    if (mayFollowItself) return late + 1;
    if (pile.answer === before?.answer) return late;
    return late + (isPressing(pile) ? 2 : 1);
  };

  let most = Number.NEGATIVE_INFINITY;
  let drawn: Pile[] = [];
  for (const pile of piles) {
    if (pile.left === 0) continue;
    const now = urgency(pile);
    if (now > most) drawn = [];
    if (now >= most) drawn.push(pile);
    most = Math.max(most, now);
  }
  return weighed(drawn, dice);
}

function weighed(piles: readonly Pile[], dice: Dice): Pile | null {
  let at = dice.below(piles.reduce((sum, pile) => sum + pile.left, 0));
  for (const pile of piles) {
    at -= pile.left;
    if (at < 0) return pile;
  }
  return null;
}
