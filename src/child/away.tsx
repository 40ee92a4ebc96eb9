import { Action } from './action';
import { Needle } from './needle';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface AwayProps {
  readonly edge: number;
  readonly onCarryOn: () => void;
  readonly onGrownUps: () => void;
  readonly onNotMe?: (() => void) | undefined;
}

/** Back after an interruption: the same card waits. The press that carries on is not an answer. */
export function AwayScreen({ edge, onCarryOn, onGrownUps, onNotMe }: AwayProps) {
  return (
    <StepScreen
      title={words.away}
      edge={edge}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
      actions={<Action onPress={onCarryOn}>{words.carryOn}</Action>}
    >
      <svg class="drawing" viewBox="0 0 260 150" aria-hidden="true">
        <path class="patch" d="M24 16H236V134H24Z" />
        <path class="seam" d="M33 25H227V125H33Z" />
        <path class="running" d="M44 76H128" />
        <path class="yarn" d="M128 76c14 0 18 22 4 26s-22-14-4-22 30-10 42-26" />
        <Needle x={168} y={58} turn={-50} />
      </svg>
    </StepScreen>
  );
}
