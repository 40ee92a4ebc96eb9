import type { Desk } from '../../state/desk';
import type { Gate } from '../../state/gate';
import { ChildTabs, chosenChild } from '../children/child-tabs';
import { Heading } from '../parts/heading';
import { ChildMorning } from './child-morning';
import { ChildNumbers } from './child-numbers';
import { ChildSwitches } from './child-switches';
import { GateSettings } from './gate-settings';
import { HouseholdSection } from './household-section';
import { settingsWords } from './words';

export interface SettingsPageProps {
  readonly desk: Desk;
  /** `null` on the boat, whose door is its own. */
  readonly gate: Gate | null;
}

/** Every default of the trade, per child; what holds for the household; the gate. */
export function SettingsPage({ desk, gate }: SettingsPageProps) {
  const child = chosenChild(desk.household.value);
  return (
    <>
      <Heading>{settingsWords.title}</Heading>
      <ChildTabs desk={desk} page="settings" />
      {child && (
        <section key={child.id} aria-label={settingsWords.forChild(child.name)}>
          <h2>{settingsWords.forChild(child.name)}</h2>
          <ChildSwitches desk={desk} child={child} />
          <ChildMorning desk={desk} child={child} />
          <ChildNumbers desk={desk} child={child} />
        </section>
      )}
      <HouseholdSection desk={desk} />
      {gate && <GateSettings gate={gate} />}
    </>
  );
}
