import { Action } from './action';
import { NextPicture, type NextPictureProps, type NextStep } from './pictures';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface NextProps extends NextPictureProps {
  readonly edge: number;
  readonly onBegin: () => void;
  readonly onGrownUps: () => void;
  readonly onNotMe?: (() => void) | undefined;
}

const titles: Record<NextStep, string> = {
  practice: words.practise,
  firstTry: words.firstTry,
  cards: words.cards,
  sheet: words.sheet,
  threadSheet: words.threadSheet,
  bellSheet: words.bellSheet,
  lookBack: words.lookBack,
  row: words.row,
  mend: words.mend,
  twin: words.twin,
  lines: words.lines,
  piece: words.piece,
};

/** *Next*: the one step to take now. */
export function Next({ edge, onBegin, onGrownUps, onNotMe, ...picture }: NextProps) {
  return (
    <StepScreen
      title={titles[picture.step]}
      edge={edge}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
      isNotMeNamed
      actions={<Action onPress={onBegin}>{words.begin}</Action>}
    >
      <NextPicture {...picture} />
    </StepScreen>
  );
}
