import '../parent.css';
import { useEffect } from 'preact/hooks';
import type { Desk } from '../../state/desk';
import type { Gate } from '../../state/gate';
import { ChildStep } from './child-step';
import { CodeStep } from './code-step';
import { DoneStep } from './done-step';
import { KnownStep } from './known-step';
import { PinStep } from './pin-step';
import { type SetupStep, setupStep, setupSteps } from './progress';
import { SetStep } from './set-step';
import { StorageStep } from './storage-step';
import { setupWords } from './words';

export interface SetupProps {
  readonly desk: Desk;
  readonly gate: Gate;
}

/** The first set-up, step by step; with a PIN chosen already it begins with a child. */
export function Setup({ desk, gate }: SetupProps) {
  useEffect(() => {
    setupStep.value ??= gate.phase.value === 'unset' ? { at: 'storage' } : { at: 'child' };
  }, [gate]);
  const step = setupStep.value;
  if (!step) return null;
  return (
    <main class="parent setup">
      <div class="slip">
        <p class="hint">{setupWords.step(setupSteps.indexOf(step.at) + 1, setupSteps.length)}</p>
        <StepBody key={step.at} step={step} desk={desk} gate={gate} />
      </div>
    </main>
  );
}

function StepBody({ step, desk, gate }: SetupProps & { readonly step: SetupStep }) {
  switch (step.at) {
    case 'storage':
      return <StorageStep desk={desk} />;
    case 'pin':
      return <PinStep gate={gate} />;
    case 'code':
      return <CodeStep desk={desk} prepared={step.prepared} />;
    case 'child':
      return <ChildStep desk={desk} />;
    case 'known':
      return <KnownStep desk={desk} child={step.child} marked={step.marked} />;
    case 'set':
      return <SetStep desk={desk} child={step.child} />;
    case 'done':
      return <DoneStep desk={desk} child={step.child} />;
  }
}
