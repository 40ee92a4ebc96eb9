import './paper-page.css';
import type { History } from '../../core/household/history';
import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { insideWords } from '../words';
import { PaperClock } from './paper-clock';
import { paperPlace, turnToPart } from './paper-place';
import { PrintPart } from './print-part';
import { ResultPart } from './result-part';
import { type PaperPart, paperPageWords } from './words';

export interface PaperPartProps {
  readonly desk: Desk;
  readonly history: History;
}

const parts: readonly PaperPart[] = ['result', 'print', 'clock'];

/** Paper: a result entered, things printed, and a clock for a sheet on the table. */
export function PaperPage({ desk }: { readonly desk: Desk }) {
  const history = desk.history.value;
  const { part } = paperPlace.value;
  return (
    <>
      <div class="no-print">
        <Heading>{paperPageWords.title}</Heading>
        <nav class="child-tabs" aria-label={paperPageWords.parts}>
          {parts.map((one) => (
            <button
              key={one}
              type="button"
              aria-current={one === part ? 'true' : undefined}
              onClick={() => {
                turnToPart(one);
              }}
            >
              {paperPageWords.part[one]}
            </button>
          ))}
        </nav>
      </div>
      {history ? (
        <Part part={part} desk={desk} history={history} />
      ) : (
        <p role="status">{insideWords.historyLoading}</p>
      )}
    </>
  );
}

function Part({ part, ...props }: PaperPartProps & { readonly part: PaperPart }) {
  switch (part) {
    case 'result':
      return <ResultPart {...props} />;
    case 'print':
      return <PrintPart {...props} />;
    case 'clock':
      return <PaperClock desk={props.desk} />;
  }
}
