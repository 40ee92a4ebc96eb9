import type { Operation } from '../core/fact/fact';
import type { Dye } from './dye';
import { uneven } from './uneven';

/**
 * What a place on the cloth looks like: worked, half worked, a hole, a hole darned shut, or plain weave.
 * Told by shape; the colour only says which set it was.
 */
export type StitchState = 'stitch' | 'loose' | 'hole' | 'mended' | 'plain';

export interface StitchProps {
  readonly op: Operation;
  readonly state: StitchState;
  readonly seed: number;
  readonly dye?: Dye;
}

/** A stitch is drawn on a square of this side. */
export const stitchSide = 20;

type Stroke = readonly [number, number, number, number];

const strokes: Record<Operation, readonly Stroke[]> = {
  add: [
    [10, 3.4, 10, 16.6],
    [3.4, 10, 16.6, 10],
  ],
  sub: [[3, 10, 17, 10]],
  mul: [
    [4.8, 4.8, 15.2, 15.2],
    [15.2, 4.8, 4.8, 15.2],
  ],
  div: [
    [3, 10, 17, 10],
    // French knots: a stroke with no length is a round one.
    [10, 4.4, 10.1, 4.4],
    [10, 15.6, 10.1, 15.6],
  ],
};

/** One stitch as part of a drawing; its square begins at 0,0. */
export function Stitch({ op, state, seed, dye = 'indigo' }: StitchProps) {
  const wobble = uneven(seed);
  const off = (length: number, size: number) => round(length + wobble() * size);
  const draw = ([x1, y1, x2, y2]: Stroke) =>
    `M${off(x1, 0.5)} ${off(y1, 0.5)}Q${off((x1 + x2) / 2, 0.9)} ${off((y1 + y2) / 2, 0.9)} ${off(x2, 0.5)} ${off(y2, 0.5)}`;
  if (state === 'plain') return <path class="weave" d={plainWeave} />;
  if (state === 'hole') return <path class="hole" d={holeRim} />;
  const worked = state === 'loose' ? strokes[op].slice(0, 1) : strokes[op];
  return (
    <g class={`thread ${dye}`}>
      {state === 'mended' && <path class="darn" d={darn} />}
      {worked.map((stroke) => {
        const d = draw(stroke);
        return (
          <g key={d}>
            <path class="ply-edge" d={d} />
            <path class="ply" d={d} />
          </g>
        );
      })}
      {state === 'loose' && <path class="tail" d="M16 10q2 3-1 5t0 5" />}
    </g>
  );
}

// Over and under: short floats, each row shifted by one.
const plainWeave = floats(4, 4);
const darn = floats(3, 5);

function floats(from: number, count: number): string {
  const step = (stitchSide - 2 * from) / count;
  const long = round(step * 0.86);
  let d = '';
  for (let row = 0; row < count; row += 1) {
    for (let column = 0; column < count; column += 1) {
      const x = from + column * step;
      const y = from + row * step;
      d +=
        (row + column) % 2
          ? `M${round(x)} ${round(y + step / 2)}h${long}`
          : `M${round(x + step / 2)} ${round(y)}v${long}`;
    }
  }
  return d;
}

function round(length: number): number {
  return Math.round(length * 10) / 10;
}

// Four slack threads left standing across an open square, its corners held by nothing.
const holeRim = 'M4 5q6-1 12 0M4 15q6 1 12 0M5 4q-1.4 6 0 12M15 4q1.4 6 0 12M5.5 5.5h9v9h-9z';
