import type { FactReading, FactState } from '../../readings/facts/fact-reading';
import { StateMark } from './state-mark';
import { factsWords, lackingMeanings, shortName, stateMeanings } from './words';

const states: readonly FactState[] = ['quick', 'slow', 'uneven', 'toLearn', 'notEnough'];

/** What the shapes on the grids mean, and how many facts have each: a small screen has no room for words in the cells. */
export function StateKey({ readings }: { readonly readings: readonly FactReading[] }) {
  const named = (name: string) => readings.filter((reading) => shortName(reading) === name).length;
  return (
    <section aria-label={factsWords.key}>
      <ul class="state-key">
        {states.map((state) => (
          <li key={state}>
            <StateMark state={state} /> <b>{stateMeanings[state][0]}</b>{' '}
            {factsWords.of(readings.filter((reading) => reading.state === state).length)}:{' '}
            {stateMeanings[state][1]}
          </li>
        ))}
        {lackingMeanings
          .filter(([name]) => named(name) > 0)
          .map(([name, means]) => (
            <li key={name}>
              <StateMark state="notEnough" /> <b>{name}</b> {factsWords.of(named(name))}: {means}
            </li>
          ))}
      </ul>
      <p class="hint">
        {factsWords.notMetMark} {factsWords.threeSeconds}
      </p>
    </section>
  );
}
