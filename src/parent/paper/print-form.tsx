import type { Signal } from '@preact/signals';
import type { Operation } from '../../core/fact/fact';
import { operations } from '../../core/fact/fact-list';
import type { Household } from '../../core/household/household';
import type { Day, Id } from '../../core/record/stamp';
import { teachingSets } from '../../core/set/teaching-sets';
import { paperSizeFor } from '../../paper/paper-size';
import type { Desk } from '../../state/desk';
import { ownSets } from '../children/set-list';
import { operationNames } from '../fact-grid/words';
import { Choice } from '../parts/choice';
import { Tick } from '../parts/tick';
import { shortDay } from '../parts/when';
import { schoolDaysFrom } from './plan-prints';
import { Select } from './select';
import { type PrintWhat, printWords } from './words';

/** What the parent has chosen to print. */
export interface PrintChoice {
  readonly what: PrintWhat;
  readonly who: ReadonlySet<Id>;
  readonly from: Day;
  readonly days: number;
  /** `null` for each child's own. */
  readonly set: Id | null;
  readonly hasKey: boolean;
  readonly hasNameLine: boolean;
  readonly op: Operation;
}

/** The choice that is mostly right: today's sheets with their key, one for each child who has a set. */
export function firstForm({ children }: Household, today: Day): PrintChoice {
  const who = children.filter(({ archived, currentSet }) => !archived && currentSet !== null);
  return {
    what: 'sheets',
    who: new Set(who.map(({ id }) => id)),
    from: today,
    days: 1,
    set: null,
    hasKey: true,
    hasNameLine: false,
    op: 'mul',
  };
}

const whats: readonly PrintWhat[] = ['sheets', 'cards', 'lines', 'grid', 'cloth'];
const mostDays = 10;
/** How many days ahead a first day may be. */
const daysAhead = 8;

export interface PrintFormProps {
  readonly desk: Desk;
  readonly form: Signal<PrintChoice>;
}

/** What, for whom, for which days, and on which paper. */
export function PrintForm({ desk, form }: PrintFormProps) {
  const household = desk.household.value;
  const { what, who, from, days, set, hasKey, hasNameLine, op } = form.value;
  const turn = (changes: Partial<PrintChoice>) => {
    form.value = { ...form.value, ...changes };
  };
  const size = paperSizeFor(household.settings.paperSize, navigator.language);
  const hasDays = what === 'sheets' || what === 'lines';
  return (
    <>
      <Choice
        legend={printWords.what}
        inRow
        options={whats.map((value) => ({ value, label: printWords.whats[value] }))}
        value={what}
        onChoose={(value) => turn({ what: value })}
      />
      {what !== 'cards' && (
        <fieldset>
          <legend>{printWords.who}</legend>
          <div class="choice-row">
            <div class="choice-options">
              {household.children
                .filter(({ archived }) => !archived)
                .map(({ id, name }) => (
                  <Tick
                    key={id}
                    label={name}
                    isOn={who.has(id)}
                    onTurn={() => turn({ who: turned(who, id) })}
                  />
                ))}
            </div>
          </div>
        </fieldset>
      )}
      <div class="print-fields">
        {what !== 'grid' && what !== 'cloth' && (
          <Select
            label={printWords.set}
            value={set ?? (what === 'cards' ? cardSet(household) : '')}
            options={what === 'cards' ? setsOf(household) : [['', printWords.ownSet], ...setsOf(household)]}
            onChoose={(id) => turn({ set: id || null })}
          />
        )}
        {hasDays && (
          <>
            <Select
              label={printWords.from}
              value={from}
              options={schoolDaysFrom(desk.today.value, daysAhead, []).map((day) => [day, shortDay(day)])}
              onChoose={(day) => turn({ from: day })}
            />
            <Select
              label={printWords.days}
              value={`${days}`}
              options={Array.from({ length: mostDays }, (_, at) => [
                `${at + 1}`,
                at === 0 ? printWords.oneDay : printWords.manyDays(at + 1),
              ])}
              onChoose={(many) => turn({ days: Number(many) })}
            />
          </>
        )}
        {what === 'grid' && (
          <Select
            label={printWords.operation}
            value={op}
            options={operations.map((one) => [one, operationNames[one]])}
            onChoose={(one) => turn({ op: operations.find((other) => other === one) ?? op })}
          />
        )}
        <Select
          label={printWords.size}
          value={size}
          options={[
            ['a4', printWords.sizes.a4],
            ['letter', printWords.sizes.letter],
          ]}
          onChoose={(one) => {
            const paperSize = one === 'letter' ? 'letter' : 'a4';
            void desk.record([{ kind: 'householdSettingsChanged', changes: { paperSize } }]);
          }}
        />
      </div>
      {hasDays && (
        <div class="choice-row">
          <div class="choice-options">
            <Tick label={printWords.key} isOn={hasKey} onTurn={(isOn) => turn({ hasKey: isOn })} />
            {what === 'sheets' && (
              <Tick
                label={printWords.nameLine}
                isOn={hasNameLine}
                onTurn={(isOn) => turn({ hasNameLine: isOn })}
              />
            )}
          </div>
        </div>
      )}
    </>
  );
}

/** Cards are of one set: that of the first child who has one, where none was chosen. */
export function cardSet({ children }: Household): Id {
  return children.find(({ archived, currentSet }) => !archived && currentSet !== null)?.currentSet ?? '';
}

function setsOf(household: Household): readonly (readonly [Id, string])[] {
  return [...ownSets(household), ...teachingSets].map(({ id, name }) => [id, name]);
}

/** A child turned on or off among those printed for. */
function turned(who: ReadonlySet<Id>, child: Id): ReadonlySet<Id> {
  const next = new Set(who);
  if (!next.delete(child)) next.add(child);
  return next;
}
