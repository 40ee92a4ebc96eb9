import type { Operation } from '../core/fact/fact';
import { parsePrompt } from '../core/fact/prompt';
import type { Step } from '../core/plan/step';
import type { App } from '../state/app';
import type { Screen } from '../state/screen';
import { ChoiceScreen } from './choice';
import { Next } from './next';
import type { NextStep } from './pictures';
import { dyeOf } from './piece-picture';
import { PracticeIntro } from './practice-intro';
import { Told } from './told';

interface NextStepProps extends Extract<Screen, { on: 'next' }> {
  readonly app: App;
  readonly onNotMe: (() => void) | undefined;
}

/** What comes next, before it begins: its picture, or what has to be told or chosen first. */
export function NextStepScreen({ app: { kiosk }, child, step, day, onNotMe }: NextStepProps) {
  const { edge } = child;
  const onBegin = () => kiosk.goOn(step);
  const onGrownUps = kiosk.openGrownUps;
  if (step.what === 'told')
    return (
      <Told
        keepsTimes={child.settings.keepTimes}
        edge={edge}
        onGoOn={onBegin}
        onGrownUps={onGrownUps}
        onNotMe={onNotMe}
      />
    );
  if (step.what === 'practice')
    return (
      <PracticeIntro
        takesItself={step.plan.takesItself}
        edge={edge}
        onBegin={onBegin}
        onGrownUps={onGrownUps}
        onNotMe={onNotMe}
      />
    );
  if (step.what === 'cards' && step.isChoice) {
    const sheet = day.steps.find(({ what }) => what === 'sheet');
    return (
      <ChoiceScreen
        sheet={sheet ? pictureOf(sheet) : 'sheet'}
        {...(sheet ? workOf(sheet) : {})}
        dye={dyeOf(child.currentSet)}
        edge={edge}
        onCards={onBegin}
        onStraight={kiosk.goStraight}
        onGrownUps={onGrownUps}
        onNotMe={onNotMe}
      />
    );
  }
  const stepsLeft = day.steps.filter(({ what }) => what !== 'told' && what !== 'piece').length;
  return (
    <Next
      step={pictureOf(step)}
      stepsLeft={stepsLeft}
      {...workOf(step)}
      dye={dyeOf(child.currentSet)}
      edge={edge}
      onBegin={onBegin}
      onGrownUps={onGrownUps}
      onNotMe={onNotMe}
    />
  );
}

/** How much the picture shows, and with which sign: the step's own first one. */
function workOf(step: Step): { readonly rows?: number; readonly op?: Operation } {
  if (!('plan' in step)) return {};
  const { prompts } = step.plan;
  const first = prompts.map(parsePrompt).find((prompt) => prompt?.kind === 'fact');
  return { rows: Math.ceil(prompts.length / 5), ...(first?.kind === 'fact' ? { op: first.fact.op } : {}) };
}

function pictureOf(step: Step): NextStep {
  switch (step.what) {
    case 'sheet':
      if (step.plan.lookBack) return 'lookBack';
      if (!step.plan.clock) return 'sheet';
      return step.plan.clock.sight === 'thread' ? 'threadSheet' : 'bellSheet';
    case 'mending':
      return 'mend';
    case 'firstTry':
    case 'cards':
    case 'twin':
    case 'lines':
    case 'row':
    case 'practice':
    case 'piece':
      return step.what;
    case 'told':
      return 'practice';
  }
}
