import { useSignal } from '@preact/signals';
import { type Band, bands } from '../../core/marking/band';
import { defaultHouseholdSettings, type HouseholdSettings } from '../../core/record/settings';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { draft, dropDraft } from '../drafts';
import { Field } from '../parts/field';
import { Tick } from '../parts/tick';
import { Trouble } from '../parts/trouble';
import { useFaultFocus } from '../parts/use-fault-focus';
import { type BandNameFault, readBandNames } from './band-names';
import { bandNameFaults, settingsWords } from './words';

/** Band names and sounds, for everyone. */
export function HouseholdSection({ desk }: { readonly desk: Desk }) {
  const { act, trouble } = useActing();
  const said = useSignal<string | null>(null);
  const faults = useSignal<Partial<Record<Band, BandNameFault>>>({});
  const { form, lookAtFault } = useFaultFocus();
  const { settings } = desk.household.value;
  const draftKey = (band: Band) => `band-name-${band}`;
  const typed = (band: Band) => draft(draftKey(band), settings.bandNames[band]);
  const turn = (changes: Partial<HouseholdSettings>) =>
    act(() => desk.record([{ kind: 'householdSettingsChanged', changes }]));

  async function keepNames(event: Event) {
    event.preventDefault();
    const [firm, even, loose, thin] = [typed('firm'), typed('even'), typed('loose'), typed('thin')].map(
      ({ value }) => value,
    ) as [string, string, string, string];
    const reading = readBandNames({ firm, even, loose, thin });
    faults.value = reading.ok ? {} : reading.faults;
    said.value = null;
    if (!reading.ok) return lookAtFault();
    if (!(await turn({ bandNames: reading.names }))) return;
    for (const band of bands) dropDraft(draftKey(band));
    said.value = settingsWords.saved;
  }

  return (
    <section>
      <h2>{settingsWords.household}</h2>
      <Trouble sentence={trouble} />
      <Tick label={settingsWords.sounds} isOn={settings.sounds} onTurn={(sounds) => turn({ sounds })} />
      <br />
      <Tick
        label={settingsWords.keySound}
        isOn={settings.keySound}
        onTurn={(keySound) => turn({ keySound })}
      />
      <form ref={form} onSubmit={keepNames} noValidate>
        <h3>{settingsWords.bandNames}</h3>
        <p class="hint">{settingsWords.bandNamesLead}</p>
        <div class="bands">
          {bands.map((band, index) => {
            const fault = faults.value[band];
            return (
              <Field
                key={band}
                label={settingsWords.bandNumber(index + 1)}
                hint={settingsWords.usual(`“${defaultHouseholdSettings.bandNames[band]}”`)}
                value={typed(band)}
                fault={fault && bandNameFaults[fault]}
              />
            );
          })}
        </div>
        <p class="kept" role="status">
          {said}
        </p>
        <div class="actions">
          <button type="submit">{settingsWords.saveNames}</button>
        </div>
      </form>
    </section>
  );
}
