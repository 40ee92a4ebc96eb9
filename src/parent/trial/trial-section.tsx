import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Child, Trial } from '../../core/household/household';
import { seedFor } from '../../core/plan/seed';
import type { Id } from '../../core/record/stamp';
import { makeDice } from '../../core/sheet/dice';
import type { ReadTrial } from '../../readings/clock-trial/read-trial';
import { drawOrder, reachableP, type TrialPlan, trialOrders } from '../../readings/clock-trial/trial';
import { sentenceOfTrial } from '../../readings/sentences/of-time';
import { say } from '../../readings/sentences/say';
import type { Desk } from '../../state/desk';
import { type Acting, useActing } from '../acting';
import { Choice } from '../parts/choice';
import { Said } from '../parts/said';
import { Trouble } from '../parts/trouble';
import type { ChildReading } from '../reading/child-reading';
import { trialWords } from './words';

export interface TrialSectionProps {
  readonly desk: Desk;
  readonly reading: ChildReading;
}

/** The clock trial: what it is, its beginning, where it stands, and what it showed. */
export function TrialSection({ desk, reading }: TrialSectionProps) {
  const acting = useActing();
  const title = useRef<HTMLHeadingElement>(null);
  const { trial } = reading;
  const isOn = trial !== null && !trial.trial.isStopped && !trial.isWhole;
  const told = useRef(trial?.trial);
  // What was pressed is gone then, and with it the focus.
  useLayoutEffect(() => {
    if (isOther(told.current, trial?.trial)) title.current?.focus();
    told.current = trial?.trial;
  }, [trial]);
  return (
    <section class={trial ? undefined : 'no-print'}>
      <h2 ref={title} tabIndex={-1}>
        {trialWords.title}
      </h2>
      {trial && <TrialStands desk={desk} trial={trial} acting={acting} child={reading.child} />}
      {!isOn && (
        <div class="no-print">
          {trial && <h3>{trialWords.again}</h3>}
          <BeginTrial desk={desk} reading={reading} acting={acting} />
        </div>
      )}
      <Trouble sentence={acting.trouble} />
    </section>
  );
}

function isOther(one: Trial | undefined, other: Trial | undefined): boolean {
  return one?.id !== other?.id || one?.isStopped !== other?.isStopped;
}

interface TrialStandsProps {
  readonly desk: Desk;
  readonly trial: ReadTrial;
  readonly acting: Acting;
  readonly child: Child;
}

function TrialStands({ desk, trial, acting, child }: TrialStandsProps) {
  /** The record that stopped it on this page just now, to be taken back. */
  const stoppedBy = useSignal<Id | null>(null);
  const { id, isStopped } = trial.trial;
  const stop = () =>
    acting.act(async () => {
      const [made] = await desk.record([{ kind: 'trialStopped', child: child.id, trial: id }]);
      stoppedBy.value = made?.id ?? null;
    });
  const goOn = (record: Id) =>
    acting.act(async () => {
      await desk.undo(record);
      stoppedBy.value = null;
    });
  return (
    <div>
      <Said {...say(sentenceOfTrial(trial), child.name)} />
      {!trial.isWhole && !isStopped && (
        <>
          <p class="hint">{trialWords.orderKept}</p>
          <div class="actions">
            <button type="button" onClick={stop}>
              {trialWords.stop}
            </button>
          </div>
          <p class="hint">{trialWords.stopHint}</p>
        </>
      )}
      {isStopped && stoppedBy.value !== null && (
        <div class="actions">
          <button type="button" onClick={() => stoppedBy.value && goOn(stoppedBy.value)}>
            {trialWords.goOn}
          </button>
        </div>
      )}
    </div>
  );
}

const plans: readonly TrialPlan[] = ['eight', 'ten', 'twelveInPairs'];

function BeginTrial({ desk, reading, acting }: TrialSectionProps & { readonly acting: Acting }) {
  const plan = useSignal<TrialPlan>('ten');
  const { child, readiness } = reading;
  const why = whyNot(reading);

  function begin() {
    if (!readiness) return undefined;
    const dice = makeDice(seedFor(child.id, desk.newId(), 'trial', 0));
    const order = drawOrder(plan.value, dice);
    return acting.act(() =>
      desk.record([{ kind: 'trialDrawn', child: child.id, set: readiness.set, plan: plan.value, order }]),
    );
  }

  return (
    <>
      <p>{trialWords.what(child.name)}</p>
      <p>{trialWords.settled}</p>
      {why ? (
        <p>{why}</p>
      ) : (
        <>
          <Choice
            legend={trialWords.days}
            options={plans.map((value) => ({ value, label: trialWords.plans[value] }))}
            value={plan.value}
            onChoose={(value) => {
              plan.value = value;
            }}
          />
          <p aria-live="polite">
            {trialWords.reachable(timesIn100(plan.value))} {trialWords.weaker}
          </p>
          <ul>
            {trialWords.rules.map((rule) => (
              <li key={rule}>{rule}</li>
            ))}
          </ul>
          <div class="actions">
            <button type="button" onClick={begin}>
              {trialWords.start}
            </button>
          </div>
        </>
      )}
    </>
  );
}

/** Why no trial can begin now; `null` when one can. */
function whyNot({ child, readiness }: ChildReading): string | null {
  if (!readiness) return trialWords.noSet;
  if (!child.settings.keepTimes) return trialWords.noTimes;
  if (readiness.isAccurate) return null;
  return trialWords.needsAccurate(readiness.lastRight, readiness.lastOf);
}

/** The smallest two-sided p-value of a plan, of 100. */
function timesIn100(plan: TrialPlan): number {
  return Math.round(100 * reachableP(trialOrders[plan]).twoSided);
}
