import { Action } from './action';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface ElsewhereProps {
  readonly onTake: (() => void) | undefined;
  readonly onGrownUps: () => void;
}

/** Another window has the cloth: nothing is sat here until that one is closed, or it is taken over. */
export function Elsewhere({ onTake, onGrownUps }: ElsewhereProps) {
  return (
    <StepScreen
      title={words.elsewhere}
      onGrownUps={onGrownUps}
      actions={onTake && <Action onPress={onTake}>{words.sitHere}</Action>}
    >
      <svg class="drawing" viewBox="0 0 260 150" aria-hidden="true">
        <path class="patch" d="M84 40H244V138H84Z" />
        <path class="seam" d="M92 48H236V130H92Z" />
        <path class="running" d="M102 90H170" />
        <path class="patch" d="M16 12H176V110H16Z" />
        <path class="seam" d="M24 20H168V102H24Z" />
      </svg>
    </StepScreen>
  );
}
