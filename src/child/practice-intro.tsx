import { Action } from './action';
import { Needle } from './needle';
import { KeysPicture } from './pictures';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface PracticeIntroProps {
  /** Whether sheets take an answer by themselves, or wait for the done key. */
  readonly takesItself: boolean;
  readonly edge: number;
  readonly onBegin: () => void;
  readonly onGrownUps: () => void;
  readonly onNotMe?: (() => void) | undefined;
}

/** Says beforehand how an answer is taken, then five numbers to copy show it. */
export function PracticeIntro({ takesItself, edge, onBegin, onGrownUps, onNotMe }: PracticeIntroProps) {
  return (
    <StepScreen
      title={takesItself ? words.takesItself : words.waitsForDone}
      edge={edge}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
      actions={<Action onPress={onBegin}>{words.begin}</Action>}
    >
      <svg class="drawing" viewBox="0 0 320 172" aria-hidden="true">
        <rect class="patch" x="6" y="4" width="308" height="164" rx="3" />
        <path class="seam" d="M14 12H306V160H14Z" />
        <KeysPicture x={takesItself ? 40 : 46} y={26} />
        {takesItself ? <OffItGoes /> : <DonePressed />}
      </svg>
    </StepScreen>
  );
}

function OffItGoes() {
  return (
    <>
      <path class="running" d="M132 46C148 46 150 32 162 32S174 46 180 46" />
      <Needle x={180} y={46} />
      <rect class="patch dashed" x="232" y="26" width="60" height="40" rx="6" />
    </>
  );
}

function DonePressed() {
  return (
    <>
      <rect class="inked" x="190" y="80" width="88" height="60" rx="8" />
      <rect class="done-seam" x="195" y="85" width="78" height="50" rx="5" />
      <text class="done-word" x="234" y="118" font-size="24">
        {words.done}
      </text>
      <path class="running" d="M234 74C234 46 190 46 140 46" />
    </>
  );
}
