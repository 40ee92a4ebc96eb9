import type { PreparedPin } from '../../state/gate';
import { RecoveryCode } from '../gate-screen/recovery-code';
import { Heading } from '../parts/heading';
import { setupStep } from './progress';
import { setupWords } from './words';

/** The recovery code, shown this once. */
export function CodeStep({ prepared }: { readonly prepared: PreparedPin }) {
  return (
    <>
      <Heading>{setupWords.steps.code}</Heading>
      <p>{setupWords.codeLead}</p>
      <RecoveryCode
        prepared={prepared}
        onKept={() => {
          setupStep.value = { at: 'child' };
        }}
      />
    </>
  );
}
