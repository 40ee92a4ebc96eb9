import { useSignal } from '@preact/signals';
import type { Child } from '../../core/household/household';
import { paperSat } from '../../core/paper/paper-sat';
import type { ChildDay } from '../../core/plan/plan-day';
import type { Step } from '../../core/plan/step';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { MarkGrid } from './mark-grid';
import { noMarks, resultOf } from './marks';
import { satSentence } from './sat-sentence';
import { resultWords, stepWords } from './words';

export interface OpenStepsProps {
  readonly desk: Desk;
  readonly acting: Acting;
}

type PaperStep = Extract<Step, { what: 'row' | 'mending' | 'twin' }>;

/** What follows a sheet that was done on paper today: it may be done there too, or be left for the screen. */
export function OpenSteps({ desk, acting }: OpenStepsProps) {
  const { children } = desk.household.value;
  return children.map((child) => {
    const step = stepOnPaper(desk.days.value.get(child.id));
    return step && <OpenStep key={keyOf(step)} desk={desk} acting={acting} child={child} step={step} />;
  });
}

function keyOf({ what, plan }: PaperStep): string {
  return `${what} ${plan.of} ${plan.prompts.join()}`;
}

/** The next step of a child's day where it belongs to a sheet on paper. */
function stepOnPaper(day: ChildDay | undefined): PaperStep | null {
  const next = day?.steps[0];
  if (next?.what !== 'row' && next?.what !== 'mending' && next?.what !== 'twin') return null;
  const isOfPaper = day?.sheets.some(({ ruled: { sat } }) => sat.paper && sat.id === next.plan.of);
  return isOfPaper ? next : null;
}

interface OpenStepProps extends OpenStepsProps {
  readonly child: Child;
  readonly step: PaperStep;
}

function OpenStep({ desk, acting, child, step: { what, plan } }: OpenStepProps) {
  const words = stepWords[what];
  const state = useSignal(noMarks(plan.prompts, false));
  const at = useSignal(0);

  async function keep() {
    const result = resultOf(state.value);
    if (!result) return;
    const sat = paperSat(plan, result, desk.startOnPaper(desk.today.value));
    const names = desk.household.value.settings.bandNames;
    await acting.record(desk, [sat], resultWords.kept(satSentence(sat, child.settings, names)));
  }

  return (
    <section class="card">
      <h2>{words.title(child.name)}</h2>
      <p>{words.lead}</p>
      <MarkGrid label={words.title(child.name)} prompts={plan.prompts} state={state} at={at} />
      <div class="actions">
        <button type="button" aria-disabled={acting.isBusy.value} onClick={keep}>
          {words.keep}
        </button>
      </div>
    </section>
  );
}
