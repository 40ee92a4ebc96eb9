/** A range someone published for digits correct a minute on written sheets. None of them is a norm for keys. */
export interface PublishedRange {
  readonly source: string;
  /** What the children worked on. */
  readonly probe: 'written, several skills mixed' | 'written';
  /** School grades from and to; `null` for no upper end. */
  readonly grades: readonly [from: number, to: number | null];
  readonly level: 'frustration' | 'instruction' | 'mastery';
  /** Digits correct a minute from and to; `null` for no upper end. */
  readonly digitsPerMin: readonly [from: number, to: number | null];
  /** Errors a minute from and to, where given. */
  readonly errorsPerMin: readonly [from: number, to: number | null] | null;
  /** `memory`: quoted from memory, the source not seen. */
  readonly seen: 'published' | 'memory';
}

const burns = {
  source: 'Burns, VanDerHeyden & Jiban 2006, School Psychology Review 35, 401–418',
  probe: 'written, several skills mixed',
  level: 'instruction',
  errorsPerMin: null,
  seen: 'published',
} as const;

const deno = { source: 'Deno & Mirkin 1977', probe: 'written', seen: 'memory' } as const;

/** The ranges shown beside a rate, each as what it is. There are no published ranges for keyed digits. */
export const publishedRanges: readonly PublishedRange[] = [
  { ...burns, grades: [2, 3], digitsPerMin: [14, 31] },
  { ...burns, grades: [4, 5], digitsPerMin: [24, 49] },
  { ...deno, grades: [1, 3], level: 'frustration', digitsPerMin: [0, 9], errorsPerMin: [8, null] },
  { ...deno, grades: [1, 3], level: 'instruction', digitsPerMin: [10, 19], errorsPerMin: [3, 7] },
  { ...deno, grades: [1, 3], level: 'mastery', digitsPerMin: [20, null], errorsPerMin: [0, 2] },
  { ...deno, grades: [4, null], level: 'frustration', digitsPerMin: [0, 19], errorsPerMin: [8, null] },
  { ...deno, grades: [4, null], level: 'instruction', digitsPerMin: [20, 39], errorsPerMin: [3, 7] },
  { ...deno, grades: [4, null], level: 'mastery', digitsPerMin: [40, null], errorsPerMin: [0, 2] },
];
