import { FoldedCloth } from '../ui/folded-cloth';
import { StepScreen } from './step-screen';
import type { ChildCloth } from './whose';
import { words } from './words';

export interface HandOverProps {
  readonly to: ChildCloth;
  readonly onTake: () => void;
  readonly onGrownUps: () => void;
}

/** The device goes to the next child, who takes it by pressing the own cloth. */
export function HandOver({ to, onTake, onGrownUps }: HandOverProps) {
  return (
    <StepScreen title={words.handOverTo} name="hand-over" onGrownUps={onGrownUps} actions={null}>
      <div class="stack">
        <FoldedCloth name={to.name} edge={to.edge} onChoose={onTake} />
      </div>
    </StepScreen>
  );
}
