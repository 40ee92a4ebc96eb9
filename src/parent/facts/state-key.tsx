import type { FactState } from '../../readings/facts/fact-reading';
import { StateMark } from './state-mark';
import { factsWords, stateMeanings, stateNames } from './words';

const states: readonly FactState[] = ['quick', 'slow', 'uneven', 'toLearn', 'notEnough'];

/** What the shapes on the grids mean. */
export function StateKey() {
  return (
    <section aria-label={factsWords.key}>
      <ul class="state-key">
        {states.map((state) => (
          <li key={state}>
            <StateMark state={state} /> <b>{stateNames[state]}</b>: {stateMeanings[state]}
          </li>
        ))}
      </ul>
      <p class="hint">{factsWords.threeSeconds}</p>
    </section>
  );
}
