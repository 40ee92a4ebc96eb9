import { Piece, type PiecePicture } from '../ui/piece';
import { Action } from './action';
import { Needle } from './needle';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface RestingProps {
  /** Today's piece; `null` where nothing was stitched today. */
  readonly piece: PiecePicture | null;
  readonly edge: number;
  /** No school today, and nothing sat. */
  readonly isFree?: boolean;
  /** One more sheet, for the child who wants it. */
  readonly onAgain?: (() => void) | undefined;
  readonly onLongCloth: () => void;
  readonly onHandOver?: () => void;
  readonly onGrownUps: () => void;
}

/** All done for today, or nothing asked. */
export function Resting({
  piece,
  edge,
  isFree = false,
  onAgain,
  onLongCloth,
  onHandOver,
  onGrownUps,
}: RestingProps) {
  return (
    <StepScreen
      title={isFree ? words.free : words.resting}
      edge={edge}
      onGrownUps={onGrownUps}
      actions={
        <>
          {onAgain && (
            <Action plain onPress={onAgain}>
              {isFree ? words.aSheet : words.again}
            </Action>
          )}
          <Action plain onPress={onLongCloth}>
            {words.longCloth}
          </Action>
          {onHandOver && (
            <Action plain onPress={onHandOver}>
              {words.handOver}
            </Action>
          )}
        </>
      }
    >
      {piece ? <Piece piece={piece} label={words.piece} /> : <FoldedAway />}
    </StepScreen>
  );
}

/** Nothing was stitched today: the cloth lies folded, the needle in its cushion. */
function FoldedAway() {
  return (
    <svg class="drawing" viewBox="0 0 260 150" aria-hidden="true">
      <path class="patch" d="M40 96H196Q214 96 214 110T196 124H40Q26 124 26 110T40 96Z" />
      <path class="seam" d="M46 110H204" />
      <path class="patch" d="M52 68H208Q224 68 224 82T208 96H52Q38 96 38 82T52 68Z" />
      <path class="seam" d="M58 82H214" />
      <path class="shade" d="M96 68Q96 34 128 34T160 68Z" />
      <path class="seam" d="M104 62Q104 43 128 43T152 62" />
      <Needle x={136} y={4} turn={96} />
      <path class="running" d="M136 4C150 0 168 14 178 40" />
    </svg>
  );
}
