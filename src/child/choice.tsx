import type { Operation } from '../core/fact/fact';
import type { Dye } from '../ui/dye';
import { Action } from './action';
import './choice.css';
import { NextPicture, type NextStep } from './pictures';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface ChoiceScreenProps {
  /** How the sheet is sat. */
  readonly sheet: NextStep;
  readonly rows?: number;
  readonly op?: Operation;
  readonly dye: Dye;
  readonly edge: number;
  readonly onCards: () => void;
  readonly onStraight: () => void;
  readonly onGrownUps: () => void;
  readonly onNotMe?: (() => void) | undefined;
}

/** Two big pictures, neither of them the better one: the cards first, or straight to the sheet. */
export function ChoiceScreen(props: ChoiceScreenProps) {
  const { sheet, edge, onCards, onStraight, onGrownUps, onNotMe, ...work } = props;
  return (
    <StepScreen
      title={words.choice}
      name="choice-screen"
      edge={edge}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
      actions={null}
    >
      <div class="either">
        <Action plain onPress={onCards}>
          <NextPicture step="cards" stepsLeft={0} {...work} />
          <span>{words.cardsFirst}</span>
        </Action>
        <Action plain onPress={onStraight}>
          <NextPicture step={sheet} stepsLeft={0} {...work} />
          <span>{words.straight}</span>
        </Action>
      </div>
    </StepScreen>
  );
}
