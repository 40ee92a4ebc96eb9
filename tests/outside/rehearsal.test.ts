import { describe, expect, test } from 'vitest';
import type { FactId } from '../../src/core/fact/fact';
import { howManyNew } from '../../src/core/round/how-many-new';
import { countCards, rehearse } from '../../src/core/round/rehearse';

const fact = (n: number): FactId => `mul-${n}-7`;
const known = Array.from({ length: 9 }, (_, index) => fact(11 + index));
const names = new Map<FactId, string>([
  [fact(1), 'U'],
  [fact(2), 'V'],
  ...known.map((one, index) => [one, `K${index + 1}`] as const),
]);
const asText = (cards: readonly { readonly fact: FactId }[]) =>
  cards.map((card) => names.get(card.fact)).join(',');

// Burns et al. 2019: one unknown, U, among nine known, K1 to K9, is presented U,K1; U,K1,K2; … U,K1…K9; then U
// becomes the first known and the last known is taken out.
describe('incremental rehearsal in the published order', () => {
  const one = [
    'U,K1',
    'U,K1,K2',
    'U,K1,K2,K3',
    'U,K1,K2,K3,K4',
    'U,K1,K2,K3,K4,K5',
    'U,K1,K2,K3,K4,K5,K6',
    'U,K1,K2,K3,K4,K5,K6,K7',
    'U,K1,K2,K3,K4,K5,K6,K7,K8',
    'U,K1,K2,K3,K4,K5,K6,K7,K8,K9',
  ];

  test('one to nine, card by card', () => {
    expect(asText(rehearse([fact(1)], known, 9))).toBe(one.join(','));
  });

  test('the next one: the first has become K1, the ninth has left', () => {
    const next = one
      .join(';')
      .replaceAll('U', 'V')
      .replace(/K(\d)/g, (_, n: string) => (n === '1' ? 'U' : `K${Number(n) - 1}`))
      .replaceAll(';', ',');
    expect(asText(rehearse([fact(1), fact(2)], known, 9).slice(54))).toBe(next);
    expect(next).not.toContain('K9');
  });

  // Recomputed: 2 + 3 + … + 10.
  test('one to nine is 54 presentations, one to seven 35', () => {
    expect(rehearse([fact(1)], known, 9)).toHaveLength(54);
    expect(countCards(1, 9, 9)).toBe(54);
    expect(countCards(1, 9, 7)).toBe(35);
  });
});

// Burns et al. 2016, 55 pupils: mean 4.05, SD .71; a fixed 2 and a fixed 8 did worse.
test('a child of whom nothing is known starts at the published mean, as a whole number', () => {
  expect(howManyNew([], null)).toBe(Math.round(4.05));
});
