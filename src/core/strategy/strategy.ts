/**
 * A way to a fact's answer, as its kind and the numbers it works with. The kinds are the strategies usually taught for
 * basic facts: one and two more, doubles and near doubles, partners of ten and making ten (Thornton 1978; Steinberg
 * 1985: from memory), and for × what is derived from 2, 5, 10 and squares (Kling & Bay-Williams 2015). Which of them
 * a fact gets is common practice, no source.
 */
export type Strategy =
  /** No short way: the fact is learned as it stands. */
  | { readonly kind: 'none' }
  /** The turn-around is known: a and b as it is written. */
  | { readonly kind: 'turnAround'; readonly sign: '+' | '×'; readonly a: number; readonly b: number }
  | SumStrategy
  | DifferenceStrategy
  | ProductStrategy
  | QuotientStrategy;

/** n + 0, n + 1, n + 2, n + n and what lies near them, and what fills a ten. */
export type SumStrategy =
  | { readonly kind: 'noneMore' | 'oneMore' | 'twoMore'; readonly n: number }
  /** n + n. */
  | { readonly kind: 'double'; readonly n: number }
  /** n + n from 6 on: two fives, and what each n is more. */
  | { readonly kind: 'twoFives'; readonly n: number }
  /** n + (n + 1). */
  | { readonly kind: 'doubleAndOne'; readonly n: number }
  /** (n − 1) + (n + 1). */
  | { readonly kind: 'doubleBetween'; readonly n: number }
  /** a + b = 10. */
  | { readonly kind: 'makesTen'; readonly a: number; readonly b: number }
  /** a + b = 9: one less than a and the partner that fills the ten. */
  | { readonly kind: 'oneUnderTen'; readonly a: number; readonly b: number }
  /** 9 + n. */
  | { readonly kind: 'tenLessOne'; readonly n: number }
  /** large + small past ten: fill the ten first. */
  | { readonly kind: 'fillTen'; readonly large: number; readonly small: number };

/** a − b; where a difference is built up, the answer is what is added to b. */
export type DifferenceStrategy =
  | { readonly kind: 'takeNone' | 'takeAll' | 'oneLess' | 'twoLess'; readonly a: number }
  | { readonly kind: 'countUp' | 'thinkPlus' | 'upThroughTen'; readonly a: number; readonly b: number }
  /** 10 − b. */
  | { readonly kind: 'upToTen'; readonly b: number }
  /** 2n − n. */
  | { readonly kind: 'half'; readonly n: number }
  /** (2n + 1) − n, or (2n − 1) − n: half of 2n, and one more or less. */
  | { readonly kind: 'nearHalf'; readonly n: number; readonly by: 1 | -1 }
  /** a − 9: ten away, one back. */
  | { readonly kind: 'giveOneBack'; readonly a: number }
  | { readonly kind: 'backThroughTen'; readonly a: number; readonly b: number };

/** So many lots of n. */
export type ProductStrategy =
  | { readonly kind: 'noLots' | 'oneLot' | 'tenLots'; readonly n: number }
  /** 2, 4 or 8 lots: double n once, twice, three times. */
  | { readonly kind: 'doubled'; readonly n: number; readonly times: 1 | 2 | 3 }
  /** 5 lots: half of ten lots. */
  | { readonly kind: 'halfOfTen'; readonly n: number }
  /** 5 lots of 2 × half: as much as ten lots of the half. */
  | { readonly kind: 'halveAndDouble'; readonly half: number }
  /** first + more lots. */
  | { readonly kind: 'splitLots'; readonly n: number; readonly first: number; readonly more: number }
  /** of − less lots. */
  | { readonly kind: 'lotsLess'; readonly n: number; readonly of: number; readonly less: number };

/** a ÷ b. */
export type QuotientStrategy =
  | { readonly kind: 'shareNone'; readonly b: number }
  | { readonly kind: 'oneEach' | 'allForOne' | 'howManyTens' | 'doubleThenTens'; readonly a: number }
  /** ÷ 2, 4 or 8: halve a once, twice, three times. */
  | { readonly kind: 'halved'; readonly a: number; readonly times: 1 | 2 | 3 }
  /** b times what makes a? */
  | { readonly kind: 'thinkTimes'; readonly a: number; readonly b: number };
