import { useSignal } from '@preact/signals';
import type { Child } from '../../core/household/household';
import type { Band } from '../../core/marking/band';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { draft, dropDraft } from '../drafts';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { useFaultFocus } from '../parts/use-fault-focus';
import {
  type NumberFault,
  type NumberKey,
  numberKeys,
  numbersOf,
  readNumbers,
  usualNumbers,
} from './number-rules';
import { limitsLead, numberFaults, numberWords, settingsWords } from './words';

export interface ChildNumbersProps {
  readonly desk: Desk;
  readonly child: Child;
}

const bandFields: readonly (readonly [Band, readonly NumberKey[]])[] = [
  ['firm', ['firm', 'rowsFirm']],
  ['even', ['even', 'rowsEven']],
  ['loose', ['loose', 'rowsLoose']],
  ['thin', ['rowsThin']],
];

/** The settings that are numbers, kept together since the limits hang on each other. */
export function ChildNumbers({ desk, child }: ChildNumbersProps) {
  const faults = useSignal<Partial<Record<NumberKey, NumberFault>>>({});
  const said = useSignal<string | null>(null);
  const { act, isBusy, trouble } = useActing();
  const { form, lookAtFault } = useFaultFocus();
  const numbers = numbersOf(child.settings);
  const draftKey = (key: NumberKey) => `number-${child.id}-${key}`;
  const typed = (key: NumberKey) => draft(draftKey(key), `${numbers[key]}`);

  async function keep(event: Event) {
    event.preventDefault();
    const texts = Object.fromEntries(numberKeys.map((key) => [key, typed(key).value])) as Record<
      NumberKey,
      string
    >;
    const reading = readNumbers(texts, child.settings);
    faults.value = reading.ok ? {} : reading.faults;
    said.value = null;
    if (!reading.ok) return lookAtFault();
    if (Object.keys(reading.changes).length === 0) {
      said.value = settingsWords.nothingChanged;
      return;
    }
    const { changes } = reading;
    if (await act(() => desk.record([{ kind: 'childSettingsChanged', child: child.id, changes }]))) {
      for (const key of numberKeys) dropDraft(draftKey(key));
      said.value = settingsWords.saved;
    }
  }

  function putUsual() {
    for (const key of numberKeys) typed(key).value = `${usualNumbers[key]}`;
  }

  function field(key: NumberKey) {
    const { label, unit } = numberWords[key];
    const fault = faults.value[key];
    return (
      <Field
        key={key}
        label={label}
        unit={unit}
        hint={settingsWords.usual(`${usualNumbers[key]}`)}
        value={typed(key)}
        fault={fault && numberFaults[fault]}
        digits
      />
    );
  }

  const isFaulty = Object.keys(faults.value).length > 0;
  return (
    <form ref={form} onSubmit={keep} noValidate>
      <h3>{settingsWords.numbers}</h3>
      <div class="three">
        {field('length')}
        {field('allowanceS')}
        {field('keptPercent')}
      </div>
      <p class="hint">{limitsLead}</p>
      <div class="bands">
        {bandFields.map(([band, keys]) => (
          <fieldset key={band}>
            <legend>{desk.household.value.settings.bandNames[band]}</legend>
            {keys.map(field)}
          </fieldset>
        ))}
      </div>
      <Trouble sentence={trouble} />
      <p class={isFaulty ? 'said' : 'kept'} role="status">
        {isFaulty ? settingsWords.lookAgain : said.value}
      </p>
      <div class="actions">
        <button type="submit" class="main" aria-disabled={isBusy.value}>
          {settingsWords.save}
        </button>
        <button type="button" class="quiet" onClick={putUsual}>
          {settingsWords.toUsual}
        </button>
      </div>
    </form>
  );
}
