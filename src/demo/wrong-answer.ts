import type { Fact } from '../core/fact/fact';
import type { Chance } from './chance';

type Wrong = readonly [weight: number, answers: (fact: Fact) => readonly number[]];

const offByOne: Wrong[1] = ({ answer }) => [answer - 1, answer + 1];
const offByTwo: Wrong[1] = ({ answer }) => [answer - 2, answer + 2];
const named: Wrong[1] = ({ a, b }) => [a, b];

// The kinds are those of Campbell & Graham 1985; Siegler & Shrager 1984; Geary, Hoard & Bailey 2011. How often a child
// makes each is not known: the weights are our own, with operand errors most by far, as in grown-ups.
const kinds: Readonly<Record<Fact['op'], readonly Wrong[]>> = {
  add: [
    [0.6, offByOne],
    [0.2, ({ a, b }) => [a + 1, b + 1]],
    [0.1, ({ a, b }) => [Math.abs(a - b)]],
    [0.1, named],
  ],
  sub: [
    [0.65, offByOne],
    [0.15, offByTwo],
    [0.1, ({ a, b }) => [a + b]],
    [0.1, named],
  ],
  mul: [
    [0.7, ({ a, b }) => [a * (b - 1), a * (b + 1), (a - 1) * b, (a + 1) * b]],
    [0.12, ({ a, b }) => [a * (b - 2), a * (b + 2)]],
    [0.1, offByOne],
    [0.08, ({ a, b }) => [a + b]],
  ],
  div: [
    [0.7, offByOne],
    [0.2, offByTwo],
    [0.1, named],
  ],
};

/** A wrong answer of a likely kind. */
export function wrongAnswer(fact: Fact, chance: Chance): number {
  let left = chance.unit();
  for (const [weight, answers] of kinds[fact.op]) {
    left -= weight;
    const wrong = answers(fact).filter((answer) => answer >= 0 && answer !== fact.answer);
    const picked = left < 0 ? chance.pick(wrong) : undefined;
    if (picked !== undefined) return picked;
  }
  return fact.answer + 1;
}

/** The keys that share a side with a digit's, on the phone's pad. */
const beside: Readonly<Record<string, string>> = {
  '0': '8',
  '1': '24',
  '2': '135',
  '3': '26',
  '4': '157',
  '5': '2468',
  '6': '359',
  '7': '48',
  '8': '5790',
  '9': '68',
};

/** The digit of a key hit by mistake. */
export function strayDigit(digit: string, chance: Chance): string {
  return chance.pick([...(beside[digit] ?? '')]) ?? digit;
}
