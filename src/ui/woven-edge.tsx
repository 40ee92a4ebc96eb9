import { useId } from 'preact/hooks';
import { type Dye, dyes } from './dye';

/** Motifs on five threads, told apart by shape alone; `#` lies on top in the first colour, `o` in the second. */
const motifs: readonly (readonly string[])[] = [
  ['..#..o', '.###..', '##.##o', '.###..', '..#..o'],
  ['#...#.', '##.##.', '.###..', 'o.#.o.', '.o.o..'],
  ['##..##', '##oo##', '..oo..', '##oo##', '##..##'],
  ['#....o', '.#..o.', '..##..', '.o..#.', 'o....#'],
  ['###...', '..#...', '..###o', '....#o', '....##'],
  ['.#.#.#', '######', 'o.o.o.', '######', '#.#.#.'],
  ['..#...', '..#.o.', '#####.', '..#.o.', '..#...'],
  ['####..', '#..#.o', '#.####', '#.#..#', '..####'],
  ['#.oo.#', '##..##', '.####.', '..##..', 'o....o'],
  ['###.o.', '###ooo', '###.o.', '......', '.#.###'],
];

const pairs = dyes.slice(0, 6);

/** How many edges there are to choose from before any comes again. */
export const edgeCount = motifs.length * pairs.length * (pairs.length - 1);

export interface WovenEdgeProps {
  readonly edge: number;
  /** Across the edge, px; its motif comes again after as much along it. */
  readonly height?: number;
  /** Runs downward, along the side of a cloth. */
  readonly isUpright?: boolean;
}

/** A child's own edge, from its number: neighbours differ in motif and in colour. */
export function WovenEdge({ edge, height = 20, isUpright = false }: WovenEdgeProps) {
  const id = useId();
  const turn = Math.abs(Math.trunc(edge));
  const motif = motifs[turn % motifs.length] ?? [];
  const round = Math.floor(turn / motifs.length);
  const first = (turn + round) % pairs.length;
  const second = (first + 1 + (Math.floor(round / pairs.length) % (pairs.length - 1))) % pairs.length;
  // Longer than any cloth: its height alone gives the scale.
  const along = { viewBox: '0 0 1000000 36', preserveAspectRatio: 'xMinYMid slice', width: '100%', height };
  const down = {
    viewBox: '0 0 36 1000000',
    preserveAspectRatio: 'xMidYMin slice',
    width: height,
    height: '100%',
  };
  return (
    <svg class="woven-edge" {...(isUpright ? down : along)} aria-hidden="true">
      <pattern
        id={id}
        width="36"
        height="36"
        patternUnits="userSpaceOnUse"
        {...(isUpright ? { patternTransform: 'matrix(0 1 1 0 0 0)' } : {})}
      >
        <path class="ground" d="M0 3h36M0 33h36" />
        <Floats dye={pairs[first]} d={draw(motif, '#')} />
        <Floats dye={pairs[second]} d={draw(motif, 'o')} />
      </pattern>
      <rect width="100%" height="100%" fill={`url(#${id})`} />
    </svg>
  );
}

/** Lit threads with the dark of the dye on either side, without which the pale dyes would be lost on linen. */
function Floats({ dye, d }: { readonly dye: Dye | undefined; readonly d: string }) {
  return (
    <g class={dye}>
      <path class="floats-edge" d={d} />
      <path class="floats" d={d} />
    </g>
  );
}

function draw(motif: readonly string[], mark: string): string {
  return motif
    .flatMap((row, y) => [...row].map((at, x) => (at === mark ? `M${x * 6 + 0.6} ${y * 5 + 8}h4.8` : '')))
    .join('');
}
