/** Which numbers of a line of six are missing; two that stand side by side always tell the rule. */
const shapes = { a: [2, 4], b: [3, 5], c: [0, 4], d: [2, 3] } as const;

/** A shape by its name. */
export type Shape = keyof typeof shapes;

const lineLength = 6;

/** The largest number on a line, and the largest step. */
const most = { number: 144, step: 12 } as const;

/** `line-up-5-15-a-0`: direction, step, first number, shape, and what is asked: gap 0, gap 1, or 2, the rule. */
export type LineId = `line-${'up' | 'down'}-${number}-${number}-${Shape}-${number}`;

/** A counting pattern with gaps, and one question about it. */
export interface GapLine {
  readonly kind: 'line';
  readonly id: LineId;
  readonly way: 'up' | 'down';
  readonly step: number;
  /** Its numbers; `null` where a gap is still open. A gap asked before is filled. */
  readonly shown: readonly (number | null)[];
  /** Which of its places is asked for; `null` where the rule is: how many more, or less, each time. */
  readonly asked: number | null;
  readonly answer: number;
}

const pattern = /^line-(up|down)-([1-9]\d?)-(0|[1-9]\d{0,2})-([a-d])-([012])$/;

/** The line an id names; `null` for any other id, and for a line that leaves the numbers from 0 to 144. */
export function parseLine(id: string): GapLine | null {
  const match = pattern.exec(id);
  if (!match) return null;
  const way = match[1] === 'up' ? 'up' : 'down';
  const [step, first, question] = [Number(match[2]), Number(match[3]), Number(match[5])];
  const numbers = numbersOf(way, step, first);
  if (step > most.step || numbers.some((number) => number < 0 || number > most.number)) return null;
  const shape = match[4] as Shape;
  const gaps: readonly number[] = shapes[shape];
  const asked = gaps[question] ?? null;
  const open = new Set(gaps.slice(question));
  return {
    kind: 'line',
    id: `line-${way}-${step}-${first}-${shape}-${question}`,
    way,
    step,
    shown: numbers.map((number, place) => (open.has(place) ? null : number)),
    asked,
    answer: (asked === null ? step : numbers[asked]) ?? Number.NaN,
  };
}

/** The questions of one line, in their order: both gaps, then the rule. */
export function lineIds(way: 'up' | 'down', step: number, first: number, shape: Shape): readonly LineId[] {
  return [0, 1, 2].map((question) => `line-${way}-${step}-${first}-${shape}-${question}` as const);
}

/** Every shape's name. */
export const shapeNames: readonly Shape[] = ['a', 'b', 'c', 'd'];

/** From its first number to its last, how far a line of that step reaches. */
export function reachOf(step: number): number {
  return (lineLength - 1) * step;
}

function numbersOf(way: 'up' | 'down', step: number, first: number): readonly number[] {
  const by = way === 'up' ? step : -step;
  return Array.from({ length: lineLength }, (_, place) => first + by * place);
}
