import { Action } from './action';
import { KeysPicture, Needle } from './pictures';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface PracticeIntroProps {
  /** Whether sheets take an answer by themselves, or wait for the done key. */
  readonly takesItself: boolean;
  readonly edge: number;
  readonly onBegin: () => void;
  readonly onGrownUps: () => void;
}

/** Says beforehand how an answer is taken, then five numbers to copy show it. */
export function PracticeIntro({ takesItself, edge, onBegin, onGrownUps }: PracticeIntroProps) {
  return (
    <StepScreen
      title={takesItself ? words.takesItself : words.waitsForDone}
      edge={edge}
      onGrownUps={onGrownUps}
      actions={<Action onPress={onBegin}>{words.begin}</Action>}
    >
      <svg class="drawing" viewBox="0 0 300 140" aria-hidden="true">
        <KeysPicture x={takesItself ? 30 : 46} y={14} />
        {takesItself ? <OffItGoes /> : <DonePressed />}
      </svg>
    </StepScreen>
  );
}

function OffItGoes() {
  return (
    <>
      <path class="running" d="M122 34C138 34 140 20 152 20S164 34 170 34" />
      <Needle x={170} y={34} />
      <rect class="patch dashed" x="222" y="14" width="64" height="40" rx="6" />
    </>
  );
}

function DonePressed() {
  return (
    <>
      <rect class="inked" x="170" y="68" width="64" height="60" rx="7" />
      <path class="tick" d="M188 98L199 109L218 86" />
      <path class="running" d="M202 64C202 38 176 34 140 34" />
    </>
  );
}
