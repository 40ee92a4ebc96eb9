import { type Dye, dyes } from '../ui/dye';
import { Stitch, stitchSide } from '../ui/stitch';
import type { WorkProps } from './pictures';

interface AtProps extends Pick<WorkProps, 'op' | 'dye'> {
  readonly x: number;
  readonly y: number;
  readonly size?: number;
}

/** One stitch, its middle at x,y. */
function StitchAt({ x, y, op, dye, size = 1.5 }: AtProps) {
  const half = (stitchSide / 2) * size;
  return (
    <g transform={`translate(${x - half} ${y - half}) scale(${size})`}>
      <Stitch op={op} state="stitch" seed={Math.round(x + 31 * y)} dye={dye} />
    </g>
  );
}

const workedAlready: ReadonlySet<number> = new Set([0, 3, 4, 7, 10, 11, 13]);

/** First try: some places are worked already, and nobody has looked yet which. */
export function SomeWorked({ rows, op, dye }: WorkProps) {
  const count = Math.max(2, Math.min(rows, 4));
  const top = 50 + (4 - count) * 15;
  return Array.from({ length: count * 5 }, (_, index) => {
    const [x, y] = [50 + (index % 5) * 30, top + Math.floor(index / 5) * 30];
    return workedAlready.has(index % 15) ? (
      <StitchAt key={index} x={x} y={y} op={op} dye={dye} />
    ) : (
      <path key={index} class="mark" d={`M${x} ${y}h.1`} />
    );
  });
}

/** A handful of cards, fanned. */
export function Cards({ op, dye }: Pick<WorkProps, 'op' | 'dye'>) {
  return (
    <>
      {[-16, 0, 16].map((turn) => (
        <g key={turn} transform={`rotate(${turn} 110 190)`}>
          <rect class="leaf" x="74" y="34" width="72" height="100" rx="7" />
          <rect class="seam" x="80" y="40" width="60" height="88" rx="4" />
        </g>
      ))}
      <g transform="rotate(16 110 190)">
        <StitchAt x={110} y={84} op={op} dye={dye} size={2.4} />
      </g>
    </>
  );
}

/** Cloths from before, folded one on the other, each in its own thread. */
export function OldCloths({ op }: Pick<WorkProps, 'op'>) {
  const own: readonly Dye[] = dyes.slice(0, 3);
  return own.map((dye, index) => {
    const [left, top] = [index % 2 === 0 ? 40 : 50, 36 + index * 40];
    return (
      <g key={dye}>
        <rect class="leaf" x={left} y={top} width="130" height="36" rx="12" />
        <path class="seam" d={`M${left + 8} ${top + 30}h114`} />
        {[0, 1, 2, 3].map((place) => (
          <StitchAt key={place} x={left + 26 + place * 26} y={top + 15} op={op} dye={dye} size={1.1} />
        ))}
      </g>
    );
  });
}

/** Two squares of one kind: one is mended, the other waits. */
export function Twins({ op, dye }: Pick<WorkProps, 'op' | 'dye'>) {
  return (
    <>
      <rect class="leaf" x="34" y="58" width="68" height="76" rx="4" />
      <rect class="leaf" x="118" y="58" width="68" height="76" rx="4" />
      <StitchAt x={68} y={96} op={op} dye={dye} size={2.4} />
      <rect class="dashed" x="128" y="70" width="48" height="52" rx="6" />
      <path class="mark" d="M152 96h.1" />
    </>
  );
}

/** Beads on a thread, one of them missing. */
export function GapsOnThread() {
  return (
    <>
      <path class="running" d="M26 96H194" />
      {['2', '4', null, '8'].map((number, index) => {
        const x = 50 + index * 40;
        return number === null ? (
          <rect key={x} class="leaf dashed" x={x - 17} y="77" width="34" height="38" rx="6" />
        ) : (
          <g key={x}>
            <rect class="leaf" x={x - 17} y="77" width="34" height="38" rx="6" />
            <text x={x} y="104" font-size="24">
              {number}
            </text>
          </g>
        );
      })}
    </>
  );
}
