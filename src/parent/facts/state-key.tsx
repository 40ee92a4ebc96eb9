import type { FactState } from '../../readings/facts/fact-reading';
import { StateMark } from './state-mark';
import { factsWords, stateMeanings } from './words';

const states: readonly FactState[] = ['quick', 'slow', 'uneven', 'toLearn', 'notEnough'];

/** What the shapes on the grids mean. */
export function StateKey() {
  return (
    <section aria-label={factsWords.key}>
      <ul class="state-key">
        {states.map((state) => (
          <li key={state}>
            <StateMark state={state} /> <b>{stateMeanings[state][0]}</b>: {stateMeanings[state][1]}
          </li>
        ))}
      </ul>
      <p class="hint">
        {factsWords.notMetMark} {factsWords.threeSeconds}
      </p>
    </section>
  );
}
