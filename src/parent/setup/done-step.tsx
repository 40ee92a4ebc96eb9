import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import { Knot } from '../../ui/knot';
import { useActing } from '../acting';
import { findChild, nameOf } from '../children/name-of';
import { setName } from '../children/set-list';
import { Heading } from '../parts/heading';
import { Trouble } from '../parts/trouble';
import { turnTo } from '../place';
import { opsText } from '../spread/words';
import { beginChild } from './new-child';
import { setupStep } from './progress';
import { setupWords } from './words';

export interface DoneStepProps {
  readonly desk: Desk;
  readonly child: Id;
  readonly records: readonly Id[];
}

/** What happens next, the way back to these pages, and the device into the child's hands. */
export function DoneStep({ desk, child, records }: DoneStepProps) {
  const { act, trouble } = useActing();
  const household = desk.household.value;
  const name = nameOf(household, child);
  const { currentSet = null, spread = null } = findChild(household, child) ?? {};

  function leave() {
    setupStep.value = null;
    beginChild(0, true);
  }

  const back = () =>
    act(async () => {
      for (const record of records.toReversed()) await desk.undo(record);
      setupStep.value = { at: spread ? 'known' : 'set' };
    });

  return (
    <>
      <Heading>{setupWords.doneTitle(name)}</Heading>
      <p>
        {spread
          ? setupWords.doneSpread(name, opsText(spread.ops))
          : setupWords.doneLead(name, setName(household, currentSet))}
      </p>
      <p>{setupWords.clockLater}</p>
      <p class="knot-shown">
        <Knot />
        <span>{setupWords.knot}</span>
      </p>
      <Trouble sentence={trouble} />
      <div class="actions">
        <button
          type="button"
          class="main"
          onClick={() => {
            leave();
            desk.handOver(child);
          }}
        >
          {setupWords.handOver(name)}
        </button>
        <button
          type="button"
          onClick={() => {
            beginChild(household.children.length, true);
            setupStep.value = { at: 'child' };
          }}
        >
          {setupWords.another}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            turnTo('today', { child });
            leave();
          }}
        >
          {setupWords.pages}
        </button>
        <button type="button" class="quiet" onClick={back}>
          {setupWords.back}
        </button>
      </div>
    </>
  );
}
