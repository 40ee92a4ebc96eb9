import type { Operation } from '../../core/fact/fact';
import { pairOf } from '../../core/fact/fact-list';
import type { History } from '../../core/household/history';
import type { Child } from '../../core/household/household';
import { PaperPage } from '../../paper/paper-page';
import type { PaperSize } from '../../paper/paper-size';
import { paperWords } from '../../paper/words';
import type { Desk } from '../../state/desk';
import { cellNumber, tableShape } from '../fact-grid/table-shape';
import { operationNames } from '../fact-grid/words';
import { StateMark } from '../facts/state-mark';
import { shortName } from '../facts/words';
import { shortDay } from '../parts/when';
import { childReading } from '../reading/child-reading';
import { useRead } from '../reading/use-read';

export interface GridPagesProps {
  readonly desk: Desk;
  readonly history: History;
  readonly child: Child;
  readonly op: Operation;
  readonly size: PaperSize;
}

/** How well each fact of an operation is known today: the table everyone knows, with shape and word in each cell. */
export function GridPages({ desk, history, child, op, size }: GridPagesProps) {
  const household = desk.household.value;
  const facts = useRead(
    function* () {
      const reading = childReading(household, history, child);
      yield* reading.prepare('facts');
      return reading.facts;
    },
    [household, history, child],
  );
  if (!facts) return null;
  const isLarge = [...facts.values()].some(
    ({ fact }) => fact.op === op && pairOf(fact).some((part) => part > 9),
  );
  const shape = tableShape(op, isLarge ? 12 : 9);
  return (
    <PaperPage size={size} kind="a-grid">
      <header>
        <h2>{paperWords.grid(child.name, operationNames[op])}</h2>
        <p>{shortDay(desk.today.value)}</p>
      </header>
      <table class="paper-grid">
        <thead>
          <tr>
            <td />
            {shape.columns.map(({ head }) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shape.rows.map(({ head }, row) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              {shape.facts[row]?.map((fact, column) => {
                const reading = fact && facts.get(fact.id);
                return (
                  <td key={fact?.id ?? column}>
                    {fact && cellNumber(fact)} {reading && <StateMark state={reading.state} />}
                    {reading && <span class="word">{shortName(reading)}</span>}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </PaperPage>
  );
}
