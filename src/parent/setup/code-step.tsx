import type { Desk } from '../../state/desk';
import type { PreparedPin } from '../../state/gate';
import { RecoveryCode } from '../gate-screen/recovery-code';
import { Heading } from '../parts/heading';
import { beginChild } from './new-child';
import { setupStep } from './progress';
import { setupWords } from './words';

export interface CodeStepProps {
  readonly desk: Desk;
  readonly prepared: PreparedPin;
}

/** The recovery code, shown this once. */
export function CodeStep({ desk, prepared }: CodeStepProps) {
  return (
    <>
      <Heading>{setupWords.steps.code}</Heading>
      <p>{setupWords.codeLead}</p>
      <RecoveryCode
        prepared={prepared}
        onKept={() => {
          // Where the children are there already, only the PIN was missing.
          const hasChildren = desk.household.value.children.length > 0;
          if (!hasChildren) beginChild(0, false);
          setupStep.value = hasChildren ? null : { at: 'child' };
        }}
      />
    </>
  );
}
