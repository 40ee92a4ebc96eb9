import type { Operation } from '../core/fact/fact';
import type { Dye } from './dye';
import { Stitch, type StitchState, stitchSide } from './stitch';

/** One place of a piece, in the order of the sheet. */
export interface PlacePicture {
  readonly op: Operation;
  readonly state: StitchState;
}

/** What a sitting left on the cloth. `seed` is the sitting's own, so that a piece looks the same for ever. */
export interface PiecePicture {
  readonly places: readonly PlacePicture[];
  readonly seed: number;
  readonly dye?: Dye;
}

export interface PieceProps {
  readonly piece: PiecePicture;
  readonly label: string;
  /** Stitches come in one after the other. */
  readonly appearing?: boolean;
}

const across = 5;
const margin = 16;

/** A day's piece, five to a row, in the same hem whether rows were added or not. */
export function Piece({ piece, label, appearing = false }: PieceProps) {
  const width = across * stitchSide + 2 * margin;
  const height = pieceRows(piece) * stitchSide + 2 * margin;
  return (
    <svg
      class={appearing ? 'piece appearing' : 'piece'}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={label}
    >
      <rect class="cloth" x="1" y="1" width={width - 2} height={height - 2} rx="2" />
      <Hem width={width} height={height} />
      <Places piece={piece} from={margin} />
    </svg>
  );
}

function Hem({ width, height }: { readonly width: number; readonly height: number }) {
  const [far, low] = [width - 8, height - 8];
  return (
    <>
      <path class="fold" d={`M5 5H${width - 5}V${height - 5}H5Z`} />
      <path class="hem" d={`M8 8H${far}V${low}H8Z`} />
    </>
  );
}

interface PlacesProps {
  readonly piece: PiecePicture;
  /** Where the first square begins, across and down. */
  readonly from: number;
}

function Places({ piece, from }: PlacesProps) {
  const { seed, dye = 'indigo' } = piece;
  return piece.places.map((place, index) => {
    const x = from + (index % across) * stitchSide;
    const y = from + Math.floor(index / across) * stitchSide;
    return (
      <g key={index} class="place" style={{ '--turn': `${index}` }} transform={`translate(${x} ${y})`}>
        <Stitch op={place.op} state={place.state} seed={seed + index * 7919} dye={dye} />
      </g>
    );
  });
}

/** How many rows of stitches a piece has, in the long cloth too. */
export function pieceRows(piece: PiecePicture): number {
  return Math.max(1, Math.ceil(piece.places.length / across));
}

/** A piece as a length of the long cloth: its rows as they were worked, without a hem of its own. */
export function Length({ piece }: { readonly piece: PiecePicture }) {
  return (
    <svg
      class="length"
      viewBox={`0 0 ${across * stitchSide} ${pieceRows(piece) * stitchSide}`}
      aria-hidden="true"
    >
      <Places piece={piece} from={0} />
    </svg>
  );
}
