import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import { EnterSheet } from './enter-sheet';
import { FindSheet } from './find-sheet-form';
import { OpenSteps } from './open-steps';
import type { PaperPartProps } from './paper-page';
import { paperPlace, turnToPart } from './paper-place';

/** A result from paper: the sheet is found, read off and kept; then what follows it, on paper too where that suits. */
export function ResultPart({ desk, history }: PaperPartProps) {
  const acting = useActing();
  const { entering } = paperPlace.value;
  return (
    <div class="no-print" data-holds=".kept">
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      {entering ? (
        <EnterSheet
          desk={desk}
          history={history}
          found={entering}
          acting={acting}
          onClose={() => turnToPart('result')}
        />
      ) : (
        <>
          <OpenSteps desk={desk} acting={acting} />
          <FindSheet
            desk={desk}
            history={history}
            onFind={(found) => turnToPart('result', { entering: found })}
          />
        </>
      )}
    </div>
  );
}
