import '../parent.css';
import { useEffect } from 'preact/hooks';
import type { Desk } from '../../state/desk';
import type { Gate } from '../../state/gate';
import { ChildStep } from './child-step';
import { CodeStep } from './code-step';
import { DoneStep } from './done-step';
import { KnownStep } from './known-step';
import { beginChild, newChild } from './new-child';
import { PinStep } from './pin-step';
import { anotherSteps, type SetupStep, setupStep, setupSteps } from './progress';
import { RestoreStep } from './restore-step';
import { SetStep } from './set-step';
import { StorageStep } from './storage-step';
import { setupWords } from './words';

export interface SetupProps {
  readonly desk: Desk;
  readonly gate: Gate;
  /** Begins with a file to restore. */
  readonly isRestoring: boolean;
}

/** The first set-up, step by step; with a PIN chosen already it begins with a child. */
export function Setup({ desk, gate, isRestoring }: SetupProps) {
  useEffect(() => {
    if (setupStep.value) return;
    beginChild(0, false);
    if (isRestoring) setupStep.value = { at: 'restore' };
    else setupStep.value = gate.phase.value === 'unset' ? { at: 'storage' } : { at: 'child' };
  }, [gate, isRestoring]);
  const step = setupStep.value;
  if (!step) return null;
  const steps = newChild.isAnother.value && anotherSteps.includes(step.at) ? anotherSteps : setupSteps;
  return (
    <main class="parent setup">
      <div class="slip">
        {steps.includes(step.at) && (
          <p class="hint">{setupWords.step(steps.indexOf(step.at) + 1, steps.length)}</p>
        )}
        <StepBody key={step.at} step={step} desk={desk} gate={gate} />
      </div>
    </main>
  );
}

function StepBody({ step, desk, gate }: Omit<SetupProps, 'isRestoring'> & { readonly step: SetupStep }) {
  switch (step.at) {
    case 'storage':
      return <StorageStep desk={desk} />;
    case 'restore':
      return <RestoreStep desk={desk} gate={gate} />;
    case 'pin':
      return <PinStep gate={gate} />;
    case 'code':
      return <CodeStep desk={desk} prepared={step.prepared} />;
    case 'child':
      return <ChildStep desk={desk} />;
    case 'known':
      return <KnownStep desk={desk} />;
    case 'set':
      return <SetStep desk={desk} />;
    case 'done':
      return <DoneStep desk={desk} child={step.child} records={step.records} />;
  }
}
