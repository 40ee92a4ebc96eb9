import type { Child } from '../../core/household/household';
import type { ChildSettings } from '../../core/record/settings';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { Choice } from '../parts/choice';
import { Tick } from '../parts/tick';
import { Trouble } from '../parts/trouble';
import { ClockTooSoon } from './clock-too-soon';
import { settingsWords as words } from './words';

export interface ChildSwitchesProps {
  readonly desk: Desk;
  readonly child: Child;
}

/** The settings that are one or the other; each is kept as soon as it is chosen. */
export function ChildSwitches({ desk, child }: ChildSwitchesProps) {
  const { act, trouble } = useActing();
  const { settings } = child;
  const turn = (changes: Partial<ChildSettings>) =>
    act(() => desk.record([{ kind: 'childSettingsChanged', child: child.id, changes }]));
  return (
    <>
      <Trouble sentence={trouble} />
      <div class="two">
        <div>
          <Choice
            legend={words.timed}
            hint={words.timedHint}
            options={[
              { value: 'no', label: words.timedNo },
              { value: 'yes', label: words.timedYes },
            ]}
            value={settings.timed ? 'yes' : 'no'}
            onChoose={(value) => turn({ timed: value === 'yes' })}
          />
          <ClockTooSoon desk={desk} child={child} />
        </div>
        <Choice
          legend={words.sight}
          hint={words.sightHint}
          options={[
            { value: 'thread', label: words.sightThread },
            { value: 'hidden', label: words.sightHidden },
          ]}
          value={settings.sight}
          onChoose={(sight) => turn({ sight })}
        />
        <Choice
          legend={words.rows}
          hint={words.rowsHint}
          options={[
            { value: 'itself', label: words.rowsItself },
            { value: 'parent', label: words.rowsParent },
          ]}
          value={settings.rowsSent}
          onChoose={(rowsSent) => turn({ rowsSent })}
        />
        <Choice
          legend={words.layout}
          hint={words.layoutHint}
          options={[
            { value: 'across', label: words.layoutAcross },
            { value: 'stacked', label: words.layoutStacked },
          ]}
          value={settings.layout}
          onChoose={(layout) => turn({ layout })}
        />
        <Choice
          legend={words.keypad}
          hint={words.keypadHint}
          options={[
            { value: 'phone', label: words.keypadPhone },
            { value: 'calculator', label: words.keypadCalculator },
          ]}
          value={settings.keypad}
          onChoose={(keypad) => turn({ keypad })}
        />
        <Choice
          legend={words.hand}
          hint={words.handHint}
          options={[
            { value: 'right', label: words.handRight },
            { value: 'left', label: words.handLeft },
          ]}
          value={settings.hand}
          onChoose={(hand) => turn({ hand })}
        />
      </div>
      <Tick label={words.takes} isOn={settings.takesItself} onTurn={(takesItself) => turn({ takesItself })} />
      <Tick label={words.keepTimes} isOn={settings.keepTimes} onTurn={(keepTimes) => turn({ keepTimes })} />
    </>
  );
}
