import type { Operation } from '../../core/fact/fact';
import { writtenFact } from '../../core/fact/written';
import type { FactReading } from '../../readings/facts/fact-reading';
import { Opened } from '../parts/opened';
import { secondsText, shortDay } from '../parts/when';
import { factsWords, stateName } from './words';

export interface FactTableProps {
  readonly op: Operation;
  readonly readings: readonly FactReading[];
}

/** The facts of one operation that have been met, row by row. */
export function FactTable({ op, readings }: FactTableProps) {
  return (
    <Opened title={factsWords.table(op)}>
      {() => (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard
        <section class="table-frame" tabIndex={0} aria-label={factsWords.table(op)}>
          <table class="plain">
            <thead>
              <tr>
                {Object.values(factsWords.columns).map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {readings.map((reading) => (
                <tr key={reading.fact.id}>
                  <th scope="row">{writtenFact(reading.fact)}</th>
                  <td>{stateName(reading)}</td>
                  <td>{factsWords.right(reading.right, reading.answers)}</td>
                  <td>{reading.days}</td>
                  <td>{thinkText(reading)}</td>
                  <td>{reading.lastDay === null ? '–' : shortDay(reading.lastDay)}</td>
                  <td>{factsWords.apart(reading.apart)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </Opened>
  );
}

function thinkText({ thinkMs, thinkIsAtMost }: FactReading): string {
  if (thinkMs === null) return '–';
  return thinkIsAtMost ? factsWords.atMost(secondsText(thinkMs)) : secondsText(thinkMs);
}
