import { Piece, type PiecePicture } from '../ui/piece';
import { Action } from './action';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface RestingProps {
  /** Today's piece; `null` where nothing was stitched today. */
  readonly piece: PiecePicture | null;
  readonly edge: number;
  readonly onLongCloth: () => void;
  readonly onHandOver?: () => void;
  readonly onGrownUps: () => void;
}

/** All done for today. */
export function Resting({ piece, edge, onLongCloth, onHandOver, onGrownUps }: RestingProps) {
  return (
    <StepScreen
      title={words.resting}
      edge={edge}
      onGrownUps={onGrownUps}
      actions={
        <>
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
      {piece && <Piece piece={piece} label={words.piece} />}
    </StepScreen>
  );
}
