import { useSignal } from '@preact/signals';
import type { FactId, Operation } from '../../core/fact/fact';
import type { Id } from '../../core/record/stamp';
import type { FactSet } from '../../core/set/fact-set';
import { orderedSets } from '../../core/set/set-order';
import { operationNames } from '../fact-grid/words';
import { Choice } from '../parts/choice';
import { Tick } from '../parts/tick';
import { tickedIn } from './set-list';
import { setWords } from './words';

export interface SetPickerProps {
  readonly legend: string;
  readonly chosen: FactSet | null;
  readonly ticked: ReadonlySet<FactId>;
  readonly own: readonly FactSet[];
  /** The parent's own order of sets. */
  readonly order?: readonly Id[];
  readonly onChoose: (set: FactSet) => void;
}

type Shelf = Operation | 'own';

/** One set out of all, an operation at a time, in the order they are taught. */
export function SetPicker({ legend, chosen, ticked, own, order = [], onChoose }: SetPickerProps) {
  const shelf = useSignal<Shelf>(chosen?.kind === 'own' ? 'own' : (chosen?.op ?? 'add'));
  const isLarge = useSignal(chosen?.reach === 12);
  const at = shelf.value;
  const sets = setsOn(at);
  const shelves: readonly Shelf[] =
    own.length > 0 ? ['add', 'sub', 'mul', 'div', 'own'] : ['add', 'sub', 'mul', 'div'];

  function setsOn(value: Shelf) {
    return value === 'own' ? own : orderedSets(value, isLarge.value ? 12 : 9, order);
  }

  /** A set that is chosen is one of those on show. */
  function turnToShelf(value: Shelf) {
    shelf.value = value;
    const shown = setsOn(value);
    const first = shown.find((set) => tickedIn(set, ticked) < set.facts.length) ?? shown[0];
    if (chosen && first && !shown.some(({ id }) => id === chosen.id)) onChoose(first);
  }

  function choose(id: Id) {
    const set = sets.find((one) => one.id === id);
    if (set) onChoose(set);
  }

  return (
    <>
      <Choice
        legend={setWords.shelf}
        inRow
        options={shelves.map((value) => ({
          value,
          label: value === 'own' ? setWords.ownShelf : operationNames[value],
        }))}
        value={at}
        onChoose={turnToShelf}
      />
      {(at === 'mul' || at === 'div') && (
        <Tick
          label={setWords.toTwelve}
          isOn={isLarge.value}
          onTurn={(isOn) => {
            isLarge.value = isOn;
          }}
        />
      )}
      <Choice
        legend={legend}
        options={sets.map((set) => ({
          value: set.id,
          label: (
            <>
              {set.name} <span class="hint">{setWords.size(set.facts.length, tickedIn(set, ticked))}</span>
            </>
          ),
        }))}
        value={chosen?.id ?? null}
        onChoose={choose}
      />
    </>
  );
}
