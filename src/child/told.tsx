import { Action } from './action';
import { Needle } from './needle';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface ToldProps {
  /** Whether this child's times are kept; if not, nothing is said of them. */
  readonly keepsTimes: boolean;
  readonly edge: number;
  readonly onGoOn: () => void;
  readonly onGrownUps: () => void;
  readonly onNotMe?: (() => void) | undefined;
}

/** Told once: a grown-up sees what is done here. */
export function Told({ keepsTimes, edge, onGoOn, onGrownUps, onNotMe }: ToldProps) {
  return (
    <StepScreen
      title={keepsTimes ? words.told : words.toldNoTimes}
      edge={edge}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
      actions={<Action onPress={onGoOn}>{words.ok}</Action>}
    >
      <svg class="drawing" viewBox="0 0 260 150" aria-hidden="true">
        <path class="patch" d="M20 84L130 104L240 84V136L130 148L20 136Z" />
        <path class="seam" d="M130 104V148" />
        <circle class="lens" cx="100" cy="52" r="25" />
        <circle class="lens" cx="160" cy="52" r="25" />
        <path class="wire" d="M125 50Q130 42 135 50M75 48L52 30M185 48L208 30" />
        <text x="75" y="126" font-size="24">
          56
        </text>
        {keepsTimes && (
          <>
            <path class="running" d="M152 124L196 117" />
            <Needle x={194} y={117.3} turn={-9} />
          </>
        )}
      </svg>
    </StepScreen>
  );
}
