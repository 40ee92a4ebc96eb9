import { StepScreen } from './step-screen';
import { words } from './words';

export interface AskProps {
  readonly edge: number;
  readonly onGrownUps: () => void;
  readonly onNotMe?: (() => void) | undefined;
}

/** Nothing can be sat before a grown-up has chosen a set: the cloth lies there, the needle has no thread. */
export function Ask({ edge, onGrownUps, onNotMe }: AskProps) {
  return (
    <StepScreen
      title={words.ask}
      edge={edge}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
      isNotMeNamed
      actions={null}
    >
      <svg class="drawing" viewBox="0 0 260 170" aria-hidden="true">
        <path class="patch" d="M20 74L130 90L240 74V152L130 164L20 152Z" />
        <path class="seam" d="M29 84L130 99L231 84V144L130 155L29 144Z" />
        <path class="steel" d="M104 130Q109 126 119 127.4L153 130L119 132.600Q109 134 104 130ZM108 130H115" />
        <circle class="outlined" cx="84" cy="26" r="15" />
        <path class="outlined" d="M56 74V68Q56 47 84 47T112 68V78" />
        <circle class="outlined" cx="162" cy="44" r="11" />
        <path class="outlined" d="M142 84V78Q142 62 162 62T182 76V82" />
        <path class="running" d="M122 40Q132 30 143 38" />
      </svg>
    </StepScreen>
  );
}
