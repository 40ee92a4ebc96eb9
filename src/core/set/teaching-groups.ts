/** Whether the pair (x, y) belongs: x + y and (x + y) − y, or x × y and (x × y) ÷ y. */
export type PairRule = (x: number, y: number) => boolean;

/** A set of + or × and its counterpart of − or ÷; where the second has no rule of its own, it takes the first's. */
export interface TeachingGroup {
  readonly reach?: 12;
  readonly forward: readonly [id: string, name: string];
  readonly backward: readonly [id: string, name: string];
  readonly rule: PairRule;
  readonly backwardRule?: PairRule;
}

const least = Math.min;
const most = Math.max;

/** 0s and 1s of which the other number is `from` to `to`. 0 and 0 stand with the doubles and the squares. */
const zerosAndOnes =
  (from: number, to: number): PairRule =>
  (x, y) =>
    least(x, y) <= 1 && most(x, y) >= from && most(x, y) <= to;

const plus = (n: number, rule?: PairRule, name = `Take away ${n}`): TeachingGroup => ({
  forward: [`plus-${n}`, `Plus ${n}`],
  backward: [`take-away-${n}`, name],
  rule: (x, y) => (x === n || y === n) && least(x, y) >= 2,
  // Both 11 − 2 and 11 − 9 would make half of all answers 2, and a child would soon give them unread.
  backwardRule: (x, y) => y === n || (rule?.(x, y) ?? false),
});

const times = (n: number): TeachingGroup => ({
  forward: [`times-${n}`, `Times ${n}`],
  backward: [`divide-by-${n}`, `Divide by ${n}`],
  rule: (x, y) => (x === n || y === n) && least(x, y) >= 1,
  backwardRule: (x, y) => y === n && x >= 1,
});

/** Tables past 9 hold the tables before them; 12 × 12 stands with the squares, or the set would be too large. */
const timesPast9 = (n: number): TeachingGroup => ({
  reach: 12,
  forward: [`times-${n}`, `Times ${n}`],
  backward: [`divide-by-${n}`, `Divide by ${n}, make ${n}`],
  rule: (x, y) => most(x, y) === n && least(x, y) >= 2 && x + y < 24,
  backwardRule: (x, y) => (y === n && x >= 2) || (x === n && y >= 2 && y <= 9),
});

/**
 * + and −, in the order taught: 0 and 1, 2, doubles, partners of ten, near doubles, making ten (Thornton 1978;
 * Steinberg 1985: from memory). Where the 3s stand, and 9, 8, then the rest past ten: common practice, no source.
 */
export const sumGroups: readonly TeachingGroup[] = [
  {
    forward: ['plus-0-and-1', 'Plus 0 and 1'],
    backward: ['take-away-0-and-1', 'Take away or leave 0 and 1'],
    rule: zerosAndOnes(0, 5),
  },
  {
    forward: ['plus-0-and-1-larger', 'Plus 0 and 1, larger numbers'],
    backward: ['take-away-0-and-1-larger', 'Take away or leave 0 and 1, larger numbers'],
    rule: zerosAndOnes(6, 9),
  },
  plus(2),
  {
    forward: ['doubles', 'Doubles'],
    backward: ['halves', 'Halves'],
    rule: (x, y) => x === y,
  },
  {
    forward: ['makes-ten', 'Makes ten, or nearly'],
    backward: ['from-ten', 'From ten'],
    // Partners of ten alone would be a sheet on which every answer is 10, so 9 and 11 stand among them.
    rule: (x, y) => Math.abs(x + y - 10) <= 1 && least(x, y) >= 2 && most(x, y) <= 8,
    backwardRule: (x, y) => x + y === 10,
  },
  {
    forward: ['near-doubles', 'Near doubles'],
    backward: ['near-halves', 'Near halves'],
    rule: (x, y) => Math.abs(x - y) === 1 && least(x, y) >= 2,
  },
  plus(3, (x, y) => (x === 2 || x === 3) && y >= 4 && y <= 7, 'Take away 3, leave 2 or 3'),
  plus(9),
  plus(8),
  {
    forward: ['past-ten', 'Past ten'],
    backward: ['from-past-ten', 'From past ten'],
    rule: (x, y) => x + y > 10 && most(x, y) <= 7,
    backwardRule: (x, y) => x + y > 10 && y >= 4 && y <= 7,
  },
];

/**
 * × and ÷, in the order taught: 2, 5, 10, then 0 and 1, squares, then what is derived from them (Kling &
 * Bay-Williams 2015); of these 3, 4, 8 first (England 2014), then 6, 9, 7 (common practice, no source).
 */
export const productGroups: readonly TeachingGroup[] = [
  times(2),
  times(5),
  timesPast9(10),
  {
    forward: ['times-0-and-1', 'Times 0 and 1'],
    backward: ['divide-with-0-and-1', 'Divide with 0 and 1'],
    // Without 0 × 0 no more than every other answer is 0.
    rule: zerosAndOnes(1, 5),
  },
  {
    forward: ['times-0-and-1-larger', 'Times 0 and 1, larger numbers'],
    backward: ['divide-with-0-and-1-larger', 'Divide with 0 and 1, larger numbers'],
    rule: zerosAndOnes(6, 9),
  },
  {
    reach: 12,
    forward: ['times-0-and-1-to-12', 'Times 0 and 1, 10 to 12'],
    backward: ['divide-with-0-and-1-to-12', 'Divide with 0 and 1, 10 to 12'],
    rule: zerosAndOnes(10, 12),
  },
  {
    forward: ['squares', 'Squares'],
    backward: ['from-squares', 'From squares'],
    rule: (x, y) => x === y && x <= 9,
  },
  {
    reach: 12,
    forward: ['squares-to-12', 'Squares to 12'],
    backward: ['from-squares-to-12', 'From squares to 12'],
    rule: (x, y) => x === y,
  },
  times(3),
  times(4),
  times(8),
  times(6),
  times(9),
  times(7),
  timesPast9(11),
  timesPast9(12),
];
