import type { Child } from '../../core/household/household';
import type { Desk } from '../../state/desk';
import { Said } from '../parts/said';
import { childReading } from '../reading/child-reading';
import { saidOfClockTooSoon } from '../reading/said';
import { useRead } from '../reading/use-read';

/** Said beside the switch once the clock is on and the set is not accurate; it stops nobody. */
export function ClockTooSoon({ desk, child }: { readonly desk: Desk; readonly child: Child }) {
  const household = desk.household.value;
  const history = desk.history.value;
  const { timed } = child.settings;
  const said = useRead(
    function* () {
      if (!history || !timed) return null;
      const reading = childReading(household, history, child);
      yield* reading.prepare('readiness');
      return saidOfClockTooSoon(reading);
    },
    [household, history, child, timed],
  );
  return <div role="status">{timed && said && <Said {...said} />}</div>;
}
