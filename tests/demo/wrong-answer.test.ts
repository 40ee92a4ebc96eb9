import { describe, expect, test } from 'vitest';
import { factsOf } from '../../src/core/fact/fact-list';
import { makeChance } from '../../src/demo/chance';
import { strayDigit, wrongAnswer } from '../../src/demo/wrong-answer';
import { keysTouch } from '../../src/readings/errors/pad';

describe('a wrong answer', () => {
  test.each(['add', 'sub', 'mul', 'div'] as const)('is never the right one, and a whole number: %s', (op) => {
    const chance = makeChance(9);
    for (const fact of factsOf(op, 12)) {
      for (let tries = 0; tries < 15; tries += 1) {
        const given = wrongAnswer(fact, chance);
        expect(given).not.toBe(fact.answer);
        expect(Number.isInteger(given) && given >= 0).toBe(true);
      }
    }
  });

  test('of a product is most often another product of one of its numbers', () => {
    const chance = makeChance(10);
    const hard = factsOf('mul').filter(({ a, b }) => a >= 6 && b >= 6);
    const given = hard.flatMap((fact) =>
      Array.from({ length: 200 }, () => [fact, wrongAnswer(fact, chance)] as const),
    );
    const operand = given.filter(([{ a, b }, answer]) => answer % a === 0 || answer % b === 0);
    expect(operand.length / given.length).toBeGreaterThan(0.7);
  });
});

test('a finger that strays hits a key that touches', () => {
  const chance = makeChance(11);
  for (const digit of '0123456789') {
    const hit = new Set(Array.from({ length: 200 }, () => strayDigit(digit, chance)));
    const touching = [...'0123456789'].filter((other) => keysTouch('phone', digit, other));
    expect([...hit].sort()).toEqual(touching);
  }
});
