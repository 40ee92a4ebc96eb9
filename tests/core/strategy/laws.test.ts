import { describe, expect, test } from 'vitest';
import type { Fact } from '../../../src/core/fact/fact';
import { factsOf, operations } from '../../../src/core/fact/fact-list';
import { turnAround } from '../../../src/core/fact/family';
import { writtenFact } from '../../../src/core/fact/written';
import type { Strategy } from '../../../src/core/strategy/strategy';
import { restsOn, strategiesFor } from '../../../src/core/strategy/strategy-for';
import { strategyLine } from '../../../src/core/strategy/words';
import { workOf } from '../../../src/core/strategy/work';

const everyFact = operations.flatMap((op) => factsOf(op, 12));
const ways = (fact: Fact) => strategiesFor(fact).filter(({ kind }) => kind !== 'turnAround');
const texts = (fact: Fact) => ways(fact).map((way) => JSON.stringify(way));
const kindsOf = (fact: Fact) => new Set(ways(fact).map(({ kind }) => kind));
const hasEither =
  (...numbers: readonly number[]) =>
  ({ a, b }: Fact) =>
    numbers.includes(a) || numbers.includes(b);

const isEvenBesideFive = (five: number, even: number) => five === 5 && even % 2 === 0 && even !== 10;

type Fits = (fact: Fact) => boolean;
type Table = Readonly<Partial<Record<Strategy['kind'], Fits>>>;

/** For whom each way of + is, among facts without a 0 or 1: the groups usually taught (common practice, no source). */
const sums: Table = {
  twoMore: hasEither(2),
  double: ({ a, b }) => a === b && a <= 5,
  twoFives: ({ a, b }) => a === b && a > 5,
  doubleAndOne: ({ a, b }) => Math.abs(a - b) === 1,
  doubleBetween: ({ a, b }) => Math.abs(a - b) === 2,
  makesTen: ({ answer }) => answer === 10,
  oneUnderTen: ({ answer }) => answer === 9,
  tenLessOne: hasEither(9),
  fillTen: ({ answer }) => answer > 10,
};

/** The same of −, among facts that neither take away 0 or 1 nor leave nothing. */
const differences: Table = {
  twoLess: ({ b }) => b === 2,
  countUp: ({ answer }) => answer <= 2,
  half: ({ b, answer }) => answer === b,
  nearHalf: ({ b, answer }) => Math.abs(answer - b) === 1,
  upToTen: ({ a }) => a === 10,
  giveOneBack: ({ a, b }) => a > 10 && b === 9,
  upThroughTen: ({ a, b }) => a > 10 && b > 6,
  backThroughTen: ({ a, b }) => a > 10 && b < 9,
  thinkPlus: ({ a }) => a < 10,
};

/** The same of ×, among facts without a 0 or 1. */
const products: Table = {
  doubled: hasEither(2, 4, 8),
  halveAndDouble: ({ a, b }) => isEvenBesideFive(a, b) || isEvenBesideFive(b, a),
  tenLots: hasEither(10),
  lotsLess: hasEither(8, 9),
};

/** The same of ÷, among facts that share out something, among more than one, and give more than one. */
const quotients: Table = {
  halved: ({ b }) => [2, 4, 8].includes(b),
  doubleThenTens: ({ b }) => b === 5,
  howManyTens: ({ b }) => b === 10,
  thinkTimes: () => true,
};

describe('a way is for just the facts that fit it', () => {
  const tables = { add: sums, sub: differences, mul: products, div: quotients };

  test.each(operations)('of %s', (op) => {
    const isPlain = ({ a, b, answer }: Fact) =>
      op === 'add' || op === 'mul' ? Math.min(a, b) > 1 : b > 1 && answer >= (op === 'div' ? 2 : 1);
    const facts = factsOf(op, 12).filter(isPlain);
    expect(facts.length).toBeGreaterThan(40);
    for (const [kind, fits] of Object.entries(tables[op]) as [Strategy['kind'], Fits][]) {
      const wanted = facts.filter(fits).map(writtenFact);
      expect(wanted.length, kind).toBeGreaterThan(0);
      expect(facts.filter((fact) => kindsOf(fact).has(kind)).map(writtenFact), kind).toEqual(wanted);
    }
  });

  test('and with a 0 or 1 there is one way, which is no more than that', () => {
    const easy = new Set<Strategy['kind']>([
      ...(['noneMore', 'oneMore', 'takeNone', 'takeAll', 'oneLess', 'noLots', 'oneLot'] as const),
      ...(['shareNone', 'oneEach', 'allForOne'] as const),
    ]);
    for (const fact of everyFact) {
      const { op, a, b, answer } = fact;
      const isEasy =
        op === 'add' || op === 'mul'
          ? Math.min(a, b) < 2
          : b < 2 || (op === 'sub' ? answer === 0 : answer < 2);
      expect(
        [...kindsOf(fact)].some((kind) => easy.has(kind)),
        writtenFact(fact),
      ).toBe(isEasy);
      if (isEasy) expect(strategiesFor(fact)).toHaveLength(1);
    }
  });
});

test('both turn-arounds have the same ways, and each has the other first where neither number is easy', () => {
  for (const fact of everyFact) {
    const partner = turnAround(fact);
    if (!partner) continue;
    expect(texts(partner).toSorted(), writtenFact(fact)).toEqual(texts(fact).toSorted());
    const [first] = strategiesFor(fact);
    const isHard = Math.min(fact.a, fact.b) > 1 && fact.a !== fact.b;
    expect(first?.kind === 'turnAround', writtenFact(fact)).toBe(isHard);
    if (first?.kind === 'turnAround') expect(workOf(first)).toBe(writtenFact(partner));
  }
});

test('a way rests on facts no harder: none with a larger answer, but for the ten that nine is one short of', () => {
  for (const fact of everyFact) {
    if (fact.op !== 'add' && fact.op !== 'mul') continue;
    for (const way of ways(fact))
      for (const { answer } of restsOn(way))
        expect(answer, `${writtenFact(fact)}: ${way.kind}`).toBeLessThanOrEqual(
          way.kind === 'oneUnderTen' ? 10 : fact.answer,
        );
  }
});

test('the work of + and − stays within twenty, that of × and ÷ within twelve twelves', () => {
  for (const fact of everyFact) {
    const most = fact.op === 'add' || fact.op === 'sub' ? 20 : 144;
    for (const way of ways(fact))
      for (const number of workOf(way).match(/\d+/g) ?? [])
        expect(Number(number), `${writtenFact(fact)}: ${workOf(way)}`).toBeLessThanOrEqual(most);
  }
});

test('ways with the same line have work of the same shape: a child sees one idea, whatever the numbers', () => {
  const shapes = new Map<string, Set<string>>();
  for (const fact of everyFact)
    for (const way of ways(fact)) {
      const line = `${way.kind} ${strategyLine(way)?.replaceAll(/\d+/g, 'n')}`;
      const shape = workOf(way).replaceAll(/\d+/g, 'n');
      shapes.set(line, (shapes.get(line) ?? new Set()).add(shape));
    }
  for (const [line, of] of shapes) expect(of.size, `${line}: ${[...of].join(' | ')}`).toBeLessThanOrEqual(2);
});
