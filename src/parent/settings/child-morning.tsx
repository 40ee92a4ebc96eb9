import { useSignal } from '@preact/signals';
import type { Child } from '../../core/household/household';
import type { ChildSettings } from '../../core/record/settings';
import { newFactBounds } from '../../core/round/how-many-new';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { SelectField } from '../parts/select-field';
import { Tick } from '../parts/tick';
import { Trouble } from '../parts/trouble';
import { settingsWords as words } from './words';

export interface ChildMorningProps {
  readonly desk: Desk;
  readonly child: Child;
}

const minuteChoices: readonly number[] = [5, 10, 15, 20, 25, 30, 45, 60];
const everyChoices: readonly number[] = [0, 3, 4, 5, 6, 7, 8, 10];
const spokenChoices: readonly number[] = [0, 5, 10, 15, 20, 30];

/** What a morning holds besides the sheet, and how long it lasts. */
export function ChildMorning({ desk, child }: ChildMorningProps) {
  const { act, trouble } = useActing();
  const { settings } = child;
  const turn = (changes: Partial<ChildSettings>) =>
    act(() => desk.record([{ kind: 'childSettingsChanged', child: child.id, changes }]));
  return (
    <>
      <h3>{words.morning}</h3>
      <Trouble sentence={trouble} />
      <SchoolDays settings={settings} turn={turn} />
      <div class="two">
        <SelectField
          label={words.minutes}
          hint={words.minutesHint}
          options={withCurrent(minuteChoices, settings.minutes).map((value) => ({
            value,
            label: words.minutesOf(value),
          }))}
          value={settings.minutes}
          onChoose={(minutes) => turn({ minutes })}
        />
        <SelectField
          label={words.newFacts}
          hint={words.newFactsHint}
          options={newFactOptions}
          value={settings.newFacts}
          onChoose={(newFacts) => turn({ newFacts })}
        />
        <SelectField
          label={words.lookBackEvery}
          hint={words.lookBackHint}
          options={withCurrent(everyChoices, settings.lookBackEvery).map((value) => ({
            value,
            label: value === 0 ? words.lookBackNone : words.everyNth(value),
          }))}
          value={settings.lookBackEvery}
          onChoose={(lookBackEvery) => turn({ lookBackEvery })}
        />
        <SelectField
          label={words.spokenEvery}
          hint={words.spokenHint}
          options={withCurrent(spokenChoices, settings.spokenEvery).map((value) => ({
            value,
            label: value === 0 ? words.spokenNone : words.everyNth(value),
          }))}
          value={settings.spokenEvery}
          onChoose={(spokenEvery) => turn({ spokenEvery })}
        />
      </div>
      <div>
        <Tick label={words.cards} isOn={settings.cards} onTurn={(cards) => turn({ cards })} />
      </div>
      <div>
        <Tick label={words.gapLines} isOn={settings.gapLines} onTurn={(gapLines) => turn({ gapLines })} />
      </div>
    </>
  );
}

interface SchoolDaysProps {
  readonly settings: ChildSettings;
  readonly turn: (changes: Partial<ChildSettings>) => Promise<boolean>;
}

/** The days of the week with school; the last one can't be taken away, or nothing would ever come. */
function SchoolDays({ settings: { schoolDays }, turn }: SchoolDaysProps) {
  const said = useSignal<string | null>(null);
  function change(day: number, isOn: boolean) {
    const days = isOn ? [...schoolDays, day] : schoolDays.filter((other) => other !== day);
    said.value = days.length === 0 ? words.lastSchoolDay : null;
    return days.length === 0 ? null : turn({ schoolDays: days.toSorted((x, y) => x - y) });
  }
  return (
    <fieldset class="choice choice-row">
      <legend>{words.schoolDays}</legend>
      <p class="hint">{words.schoolDaysHint}</p>
      <div class="choice-options">
        {words.weekdays.map((name, index) => (
          <Tick
            key={name}
            label={name}
            isOn={schoolDays.includes(index + 1)}
            onTurn={(isOn) => change(index + 1, isOn)}
          />
        ))}
      </div>
      <p class="said" role="status">
        {said}
      </p>
    </fieldset>
  );
}

const newFactOptions: readonly { readonly value: number | null; readonly label: string }[] = [
  { value: null, label: words.newFactsFollow },
  ...Array.from({ length: newFactBounds.most - newFactBounds.least + 1 }, (_, index) => {
    const value = newFactBounds.least + index;
    return { value, label: `${value}` };
  }),
];

function withCurrent(choices: readonly number[], current: number): readonly number[] {
  return choices.includes(current) ? choices : [...choices, current].toSorted((x, y) => x - y);
}
