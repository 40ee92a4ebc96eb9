import type { Operation } from '../core/fact/fact';
import { type Dye, dyes } from '../ui/dye';
import { Stitch } from '../ui/stitch';
import { uneven } from '../ui/uneven';
import { Needle, type PlacedProps } from './needle';
import { Cards, GapsOnThread, OldCloths, SomeWorked, Twins } from './step-pictures';

/** What comes next, as the child sees it. A sheet is without a clock, with the thread, or with a bell only. */
export type NextStep =
  | 'practice'
  | 'firstTry'
  | 'cards'
  | 'sheet'
  | 'threadSheet'
  | 'bellSheet'
  | 'lookBack'
  | 'row'
  | 'mend'
  | 'twin'
  | 'lines'
  | 'piece';

export interface NextPictureProps {
  readonly step: NextStep;
  /** Steps left today, this one among them: as many loose thread ends hang from the cloth. */
  readonly stepsLeft: number;
  /** How many rows of five are to be worked, with which sign and thread. */
  readonly rows?: number;
  readonly op?: Operation;
  readonly dye?: Dye;
}

/** The next step on a cloth from whose hem hang the day's loose ends. */
export function NextPicture({ step, stepsLeft, rows = 5, op = 'mul', dye = 'indigo' }: NextPictureProps) {
  return (
    <svg class={`drawing ${dye}`} viewBox="0 0 220 230" aria-hidden="true">
      <LooseEnds count={stepsLeft} />
      <rect class="patch" x="14" y="4" width="192" height="182" rx="3" />
      <path class="seam" d="M22 12H198V178H22Z" />
      {inside[step]({ rows, op, dye })}
    </svg>
  );
}

function LooseEnds({ count }: { readonly count: number }) {
  const ends = Math.min(count, 12);
  return Array.from({ length: ends }, (_, index) => {
    const wobble = uneven(index + 3);
    const x = 110 + (index - (ends - 1) / 2) * Math.min(34, 170 / ends);
    const sway = wobble() * 9;
    const length = 46 + wobble() * 5;
    return (
      <path
        key={index}
        class={`yarn ${dyes[index % 5]}`}
        d={`M${x} 178c${sway} ${length / 3} ${-sway} ${length / 1.5} ${sway / 2} ${length}`}
      />
    );
  });
}

const inside: Record<NextStep, (work: WorkProps) => preact.JSX.Element> = {
  practice: () => <KeysPicture x={54} y={36} />,
  firstTry: (work) => <SomeWorked {...work} />,
  cards: (work) => <Cards {...work} />,
  sheet: (work) => <Rows {...work} />,
  threadSheet: (work) => (
    <>
      <Rows {...work} most={4} />
      <path class="running" d="M24 163H122" />
      <Needle x={122} y={163} />
    </>
  ),
  bellSheet: (work) => (
    <>
      <Rows {...work} most={4} />
      <circle class="inked" cx="110" cy="170" r="3.5" />
      <path class="shade outlined" d="M92 168C99 162 97 146 110 144C123 146 121 162 128 168Z" />
    </>
  ),
  lookBack: (work) => <OldCloths {...work} />,
  row: (work) => <Rows {...work} rows={1} />,
  mend: () => (
    <>
      <path class="shade" d="M66 58Q110 50 154 58Q162 95 154 132Q110 140 66 132Q58 95 66 58Z" />
      <path class="seam" d="M60 52Q110 43 160 52Q169 95 160 138Q110 147 60 138Q51 95 60 52Z" />
      <path class="warp" d="M78 56V134M94 54V136M110 53V137M126 54V136M142 56V134" />
      <path class="yarn" d="M56 74H164M56 92H164M56 110H122" />
      <path class="yarn over" d="M78 68V80M110 68V80M142 68V80M94 86V98M126 86V98M78 104V116M110 104V116" />
      <Needle x={122} y={110} turn={-14} />
    </>
  ),
  twin: (work) => <Twins {...work} />,
  lines: () => <GapsOnThread />,
  piece: (work) => <Rows {...work} full />,
};

export interface WorkProps {
  readonly rows: number;
  readonly op: Operation;
  readonly dye: Dye;
}

interface RowsProps extends WorkProps {
  /** A long sheet is shown by as many rows as the picture holds. */
  readonly most?: number;
  readonly full?: boolean;
}

/** Places pricked out in fives, the first being worked. */
function Rows({ rows, op, dye, most = 5, full = false }: RowsProps) {
  const count = Math.min(rows, most);
  const top = 20 + (most - count) * 15;
  return Array.from({ length: count * 5 }, (_, index) => {
    const [x, y] = [35 + (index % 5) * 30, top + Math.floor(index / 5) * 30];
    if (full || index === 0) {
      return (
        <g key={index} transform={`translate(${x} ${y}) scale(1.5)`}>
          <Stitch op={op} state="stitch" seed={index} dye={dye} />
        </g>
      );
    }
    return <path key={index} class="mark" d={`M${x + 15} ${y + 15}h.1`} />;
  });
}

/** Three keys pressed into the outline where their number appears. */
export function KeysPicture({ x, y }: PlacedProps) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <rect class="patch dashed" x="24" y="0" width="64" height="40" rx="6" />
      <text x="56" y="30" font-size="28">
        47
      </text>
      {[4, 5, 6, 7, 8, 9].map((digit, index) => {
        const [left, top] = [(index % 3) * 38, 54 + Math.floor(index / 3) * 32];
        const isPressed = digit === 4 || digit === 7;
        return (
          <g key={digit}>
            <rect class={isPressed ? 'sewn down' : 'sewn'} x={left} y={top} width="34" height="28" rx="5" />
            <text x={left + 17} y={top + 21} font-size="19">
              {digit}
            </text>
          </g>
        );
      })}
    </g>
  );
}
