import { useSignal } from '@preact/signals';
import { Piece, type PiecePicture } from '../ui/piece';
import { Action } from './action';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface PieceScreenProps {
  readonly piece: PiecePicture;
  readonly edge: number;
  /** What the button does next: mend the holes that are left, or go on. */
  readonly next: 'mend' | 'goOn';
  readonly onNext: () => void;
  readonly onGrownUps: () => void;
}

/** However many stitches, the finishing moment takes about this long. */
const momentMs = 1_400;

/** What the sheet has become. The stitches come in one by one; a tap shows the whole at once. */
export function PieceScreen({ piece, edge, next, onNext, onGrownUps }: PieceScreenProps) {
  const isWhole = useSignal(false);
  return (
    <StepScreen
      title={words.piece}
      name="piece-screen"
      edge={edge}
      onGrownUps={onGrownUps}
      actions={<Action onPress={onNext}>{next === 'mend' ? words.mend : words.goOn}</Action>}
    >
      <div
        class="moment"
        style={{ '--beat': `${momentMs / Math.max(1, piece.places.length)}ms` }}
        onPointerDown={() => {
          isWhole.value = true;
        }}
      >
        <Piece piece={piece} label={words.piece} appearing={!isWhole.value} />
      </div>
    </StepScreen>
  );
}
