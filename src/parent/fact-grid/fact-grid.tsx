import './fact-grid.css';
import { useComputed, useSignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import type { Fact, FactId, Operation } from '../../core/fact/fact';
import type { Reach } from '../../core/fact/fact-list';
import { writtenWhole } from '../../core/fact/written';
import { cellNumber, tableShape } from './table-shape';
import { type GridPlace, walk } from './walk';
import { type GridWords, gridWords } from './words';

export interface FactGridProps {
  readonly op: Operation;
  readonly reach: Reach;
  readonly marked: ReadonlySet<FactId>;
  readonly words: GridWords;
  readonly onMark: (facts: readonly FactId[], isMarked: boolean) => void;
}

/** One operation's facts as a table to mark by cell, row, column or all at once; one tab stop, arrows inside. */
export function FactGrid({ op, reach, marked, words, onMark }: FactGridProps) {
  const shape = useMemo(() => tableShape(op, reach), [op, reach]);
  const place = useSignal<GridPlace>({ row: 0, column: 0 });
  const table = useRef<HTMLTableElement>(null);
  const size = { rows: shape.rows.length, columns: shape.columns.length };
  const all = shape.facts.flat().filter(isFact);

  function move(event: KeyboardEvent) {
    const to = walk(event.key, place.value, size);
    if (!to) return;
    event.preventDefault();
    place.value = to;
    table.current?.querySelector<HTMLElement>(`[data-place="${to.row} ${to.column}"]`)?.focus();
  }

  const markedIn = (facts: readonly Fact[]) => facts.filter((fact) => marked.has(fact.id)).length;

  function head(at: GridPlace, text: string, line: string | null, facts: readonly Fact[]) {
    const count = markedIn(facts);
    const says =
      line === null
        ? gridWords.whole(op, count, facts.length, words)
        : gridWords.line(line, count, facts.length, words);
    return (
      <PlaceButton
        at={at}
        place={place}
        text={text}
        says={says}
        isMarked={count === facts.length}
        onPress={() =>
          onMark(
            facts.map((fact) => fact.id),
            count < facts.length,
          )
        }
      />
    );
  }

  return (
    <div class="fact-grid">
      {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are buttons is a grid */}
      <table ref={table} role="grid" aria-label={gridWords.grid(op, words)} onKeyDown={move}>
        <thead>
          <tr>
            <th scope="col">{head({ row: -1, column: -1 }, gridWords.all, null, all)}</th>
            {shape.columns.map((line, column) => (
              <th key={line.head} scope="col">
                {head(
                  { row: -1, column },
                  line.head,
                  line.says,
                  shape.facts.map((row) => row[column] ?? null).filter(isFact),
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shape.rows.map((line, row) => (
            <tr key={line.head}>
              <th scope="row">
                {head({ row, column: -1 }, line.head, line.says, (shape.facts[row] ?? []).filter(isFact))}
              </th>
              {shape.facts[row]?.map((fact, column) => (
                <td key={fact?.id ?? column}>
                  {fact && (
                    <PlaceButton
                      at={{ row, column }}
                      place={place}
                      text={`${cellNumber(fact)}`}
                      says={`${writtenWhole(fact)}, ${marked.has(fact.id) ? words.marked : words.unmarked}`}
                      isMarked={marked.has(fact.id)}
                      onPress={() => onMark([fact.id], !marked.has(fact.id))}
                    />
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="hint grid-key">
        <span class="grid-sample" data-marked="true" aria-hidden="true" /> {words.marked}{' '}
        <span class="grid-sample" data-marked="false" aria-hidden="true" /> {words.unmarked}.{' '}
        {gridWords.count(markedIn(all), all.length, words)}
      </p>
    </div>
  );
}

interface PlaceButtonProps {
  readonly at: GridPlace;
  readonly place: { value: GridPlace };
  readonly text: string;
  readonly says: string;
  readonly isMarked: boolean;
  readonly onPress: () => void;
}

function PlaceButton({ at, place, text, says, isMarked, onPress }: PlaceButtonProps) {
  const isHere = useComputed(() => place.value.row === at.row && place.value.column === at.column);
  return (
    <button
      type="button"
      data-place={`${at.row} ${at.column}`}
      data-marked={isMarked}
      aria-pressed={isMarked}
      aria-label={says}
      tabIndex={isHere.value ? 0 : -1}
      onFocus={() => {
        place.value = at;
      }}
      onClick={onPress}
    >
      {text}
    </button>
  );
}

function isFact(fact: Fact | null): fact is Fact {
  return fact !== null;
}
