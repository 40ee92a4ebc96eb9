import { useSignal } from '@preact/signals';
import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import { EnterSheet } from './enter-sheet';
import type { FoundSheet } from './find-sheet';
import { FindSheet } from './find-sheet-form';
import { OpenSteps } from './open-steps';
import type { PaperPartProps } from './paper-page';

/** A result from paper: the sheet is found, read off and kept; then what follows it, on paper too where that suits. */
export function ResultPart({ desk, history }: PaperPartProps) {
  const acting = useActing();
  const open = useSignal<FoundSheet | null>(null);
  const close = () => {
    open.value = null;
  };
  return (
    <div class="no-print">
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      {open.value ? (
        <EnterSheet desk={desk} history={history} found={open.value} acting={acting} onClose={close} />
      ) : (
        <>
          <OpenSteps desk={desk} acting={acting} />
          <FindSheet
            desk={desk}
            history={history}
            onFind={(found) => {
              open.value = found;
            }}
          />
        </>
      )}
    </div>
  );
}
