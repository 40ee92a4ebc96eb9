import './state-grid.css';
import { useComputed, useSignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import type { Fact, FactId, Operation } from '../../core/fact/fact';
import { factClass } from '../../core/fact/fact-class';
import type { Reach } from '../../core/fact/fact-list';
import { writtenWhole } from '../../core/fact/written';
import type { FactReading } from '../../readings/facts/fact-reading';
import { cellNumber, tableShape } from '../fact-grid/table-shape';
import { type GridPlace, walk } from '../fact-grid/walk';
import { StateMark } from './state-mark';
import { factsWords, shortName, stateName } from './words';

export interface StateGridProps {
  readonly op: Operation;
  readonly reach: Reach;
  readonly facts: ReadonlyMap<FactId, FactReading>;
  readonly opened: FactId | null;
  readonly onOpen: (fact: FactId) => void;
}

/** One operation's facts, each by the shape and word of its state; one tab stop, arrows inside. */
export function StateGrid({ op, reach, facts, opened, onOpen }: StateGridProps) {
  const shape = useMemo(() => tableShape(op, reach), [op, reach]);
  const place = useSignal<GridPlace>({ row: 0, column: 0 });
  const table = useRef<HTMLTableElement>(null);

  function move(event: KeyboardEvent) {
    const to = walk(event.key, place.value, { rows: shape.rows.length, columns: shape.columns.length });
    if (!to) return;
    event.preventDefault();
    // The headers are no cells to open here, so the edges are walls one earlier.
    const inside = { row: Math.max(0, to.row), column: Math.max(0, to.column) };
    place.value = inside;
    table.current?.querySelector<HTMLElement>(`[data-place="${inside.row} ${inside.column}"]`)?.focus();
  }

  return (
    <div class="state-grid">
      {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are buttons is a grid */}
      <table ref={table} role="grid" aria-label={factsWords.grid(op)} onKeyDown={move}>
        <thead>
          <tr>
            <td />
            {shape.columns.map(({ head, says }) => (
              <th key={head} scope="col" aria-label={says}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shape.rows.map(({ head, says }, row) => (
            <tr key={head}>
              <th scope="row" aria-label={says}>
                {head}
              </th>
              {shape.facts[row]?.map((fact, column) => (
                <td key={fact?.id ?? column}>
                  {fact && (
                    <StateCell
                      at={{ row, column }}
                      place={place}
                      fact={fact}
                      reading={facts.get(fact.id) ?? null}
                      isOpen={fact.id === opened}
                      onOpen={onOpen}
                    />
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface StateCellProps {
  readonly at: GridPlace;
  readonly place: { value: GridPlace };
  readonly fact: Fact;
  readonly reading: FactReading | null;
  readonly isOpen: boolean;
  readonly onOpen: (fact: FactId) => void;
}

function StateCell({ at, place, fact, reading, isOpen, onOpen }: StateCellProps) {
  const isHere = useComputed(() => place.value.row === at.row && place.value.column === at.column);
  const apart = apartOf(fact);
  const state = reading ? stateName(reading) : factsWords.notMet;
  const seen = reading ? `${cellNumber(fact)} ${shortName(reading)}` : `${cellNumber(fact)}`;
  return (
    <button
      type="button"
      data-place={`${at.row} ${at.column}`}
      data-fact={fact.id}
      data-apart={apart !== null}
      data-met={reading !== null}
      aria-pressed={isOpen}
      aria-label={factsWords.cell(seen, writtenWhole(fact), state, apart)}
      tabIndex={isHere.value ? 0 : -1}
      onFocus={() => {
        place.value = at;
      }}
      onClick={() => onOpen(fact.id)}
    >
      <span class="number">{cellNumber(fact)}</span> {reading && <StateMark state={reading.state} />}
      {reading && <span class="word">{shortName(reading)}</span>}
    </button>
  );
}

function apartOf(fact: Fact): FactReading['apart'] {
  const kind = factClass(fact);
  return kind === 'tie' || kind === 'zeroOrOne' ? kind : null;
}
