import { operations } from '../core/fact/fact-list';
import { Stitch } from '../ui/stitch';
import { Action } from './action';
import { Needle } from './needle';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface WelcomeProps {
  readonly onBegin: () => void;
  readonly onVisit: () => void;
  readonly onRestore: () => void;
}

/** A device with no child on it yet. */
export function Welcome({ onBegin, onVisit, onRestore }: WelcomeProps) {
  return (
    <StepScreen
      title={words.app}
      name="welcome"
      edge={0}
      onGrownUps={onBegin}
      isKnotNamed
      actions={
        <>
          <Action leaves onPress={onBegin}>
            {words.begin}
          </Action>
          <Action plain leaves onPress={onRestore}>
            {words.restore}
          </Action>
          <Action plain leaves onPress={onVisit}>
            {words.visit}
          </Action>
        </>
      }
    >
      <svg class="drawing" viewBox="26 12 208 126" aria-hidden="true">
        <rect class="patch" x="30" y="16" width="200" height="118" rx="3" />
        <path class="seam" d="M39 25H221V125H39Z" />
        {operations.map((op, index) => (
          <g key={op} transform={`translate(${52 + index * 40} 40) scale(1.8)`}>
            <Stitch
              op={op}
              state="stitch"
              seed={index + 2}
              dye={(['moss', 'walnut', 'indigo', 'heather'] as const)[index] ?? 'indigo'}
            />
          </g>
        ))}
        <path class="running" d="M52 104H150" />
        <Needle x={150} y={104} />
      </svg>
    </StepScreen>
  );
}
