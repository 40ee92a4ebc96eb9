import type { Look, Part, Picture } from '../core/strategy/picture';
import './strategy-picture.css';

/** A dot's place: its middle, in cells of 20 by 20. */
interface Dot {
  readonly x: number;
  readonly y: number;
  readonly look: Look;
}

const cell = 20;
const frameSide = 5;
const frameSize = 10;
/** Between two frames, and where the look changes in an array. */
const gap = 8;

/** A strategy as dots: knots of thread, rings of another, outlines of what goes. One path for each look, drawn at once. */
export function StrategyPicture({ picture }: { readonly picture: Picture }) {
  const dots = dotsOf(picture);
  const cells = picture.what === 'frames' ? framesPath(dots.length) : '';
  const width = Math.max(...dots.map(({ x }) => x), cells ? (frameSide - 0.5) * cell : 0) + cell / 2;
  const rows = Math.ceil(dots.length / frameSize);
  const framed = cells ? rows * 2 * cell + (rows - 1) * gap : 0;
  const height = Math.max(...dots.map(({ y }) => y + cell / 2), framed);
  return (
    <svg
      class="strategy-picture"
      viewBox={`-2 -2 ${width + 4} ${height + 4}`}
      style={{ aspectRatio: `${width + 4} / ${height + 4}` }}
      aria-hidden="true"
    >
      {cells && <path class="cells" d={cells} />}
      {looks.map((look) => {
        const d = dots.flatMap((dot) => (dot.look === look ? [shapes[look](dot)] : [])).join('');
        return d && <path key={look} class={look} d={d} />;
      })}
    </svg>
  );
}

const looks: readonly Look[] = ['one', 'other', 'gone'];

const ring = ({ x, y }: Dot) => `M${x - 5.6} ${y}a5.6 5.6 0 1 0 11.2 0a5.6 5.6 0 1 0-11.2 0z`;

const shapes: Record<Look, (dot: Dot) => string> = {
  one: ({ x, y }) => `M${x} ${y}h.1`,
  other: ({ x, y }) => `M${x} ${y - 6}l6 6l-6 6l-6-6z`,
  gone: ring,
};

function dotsOf(picture: Picture): readonly Dot[] {
  switch (picture.what) {
    case 'frames':
      return spread(picture.parts).map(({ look }, index) => ({ ...inFrame(index), look }));
    case 'rows':
      return picture.rows.flatMap((row, line) =>
        spread(row).map(({ look }, index) => ({ x: middle(index), y: middle(line), look })),
      );
    case 'array':
      return spread(picture.rows).flatMap((row, line) =>
        spread(picture.columns).map((column, index) => ({
          x: middle(index) + column.apart,
          y: middle(line) + row.apart,
          look: row.look === 'one' ? column.look : row.look,
        })),
      );
  }
}

/** Each dot, row or column by itself; `apart`: how far those before it that look otherwise move it on. */
function spread(parts: readonly Part[]): readonly { readonly look: Look; readonly apart: number }[] {
  return parts.flatMap(({ count, look }, part) =>
    Array.from({ length: count }, () => ({ look, apart: part * gap })),
  );
}

function inFrame(index: number): Pick<Dot, 'x' | 'y'> {
  const [frame, at] = [Math.floor(index / frameSize), index % frameSize];
  return {
    x: middle(at % frameSide),
    y: middle(Math.floor(at / frameSide)) + frame * (2 * cell + gap),
  };
}

/** Empty places show too: what is missing from ten is the point of a frame. */
function framesPath(dots: number): string {
  const frames = Math.max(1, Math.ceil(dots / frameSize));
  return Array.from({ length: frames }, (_, frame) => {
    const top = frame * (2 * cell + gap);
    const lines = [1, 2, 3, 4].map((column) => `M${column * cell} ${top}v${2 * cell}`).join('');
    return `M0 ${top}h${frameSide * cell}v${2 * cell}h-${frameSide * cell}zM0 ${top + cell}h${frameSide * cell}${lines}`;
  }).join('');
}

function middle(index: number): number {
  return (index + 0.5) * cell;
}
