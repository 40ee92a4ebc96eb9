import { FoldedCloth } from '../ui/folded-cloth';
import { Action } from './action';
import { StepScreen } from './step-screen';
import type { ChildCloth } from './whose';
import { words } from './words';

export interface HandOverProps {
  readonly to: ChildCloth;
  readonly onTake: () => void;
  readonly onBack: () => void;
  readonly onGrownUps: () => void;
}

/** The device goes to the next child, who takes it by pressing the own cloth. */
export function HandOver({ to, onTake, onBack, onGrownUps }: HandOverProps) {
  return (
    <StepScreen
      title={words.handOverTo}
      name="hand-over"
      onGrownUps={onGrownUps}
      actions={
        <Action plain onPress={onBack}>
          {words.back}
        </Action>
      }
    >
      <div class="stack">
        <FoldedCloth name={to.name} edge={to.edge} onChoose={onTake} />
      </div>
    </StepScreen>
  );
}
