import { useSignal } from '@preact/signals';
import { codeOf } from '../../core/paper/paper-code';
import type { Desk } from '../../state/desk';
import { nameOf } from '../children/name-of';
import { setName } from '../children/set-list';
import { Field } from '../parts/field';
import { useFaultFocus } from '../parts/use-fault-focus';
import { longDay, shortDay } from '../parts/when';
import { turnTo } from '../place';
import { type FoundSheet, matching, printedSheets, sheetOfCode } from './find-sheet';
import type { PaperPartProps } from './paper-page';
import { turnToPart } from './paper-place';
import { codeFaults, resultWords } from './words';

const pageful = 30;

export interface FindSheetProps extends PaperPartProps {
  readonly onFind: (found: FoundSheet) => void;
}

/** The sheets printed: by the code at the foot, or by day. */
export function FindSheet({ desk, history, onFind }: FindSheetProps) {
  const code = useSignal('');
  const fault = useSignal<string | null>(null);
  const shown = useSignal(pageful);
  const { form, lookAtFault } = useFaultFocus();
  const household = desk.household.value;
  const printed = printedSheets(household, history);
  const open = printed.filter(({ entered }) => entered === null);
  const fitting = matching(open, code.value);
  const entered = matching(
    printed.filter((one) => one.entered !== null),
    code.value,
  );

  function find(event: Event) {
    event.preventDefault();
    const [only] = code.value === '' ? [] : fitting;
    const found =
      only && fitting.length === 1 ? only : sheetOfCode(code.value, printed, household, desk.today.value);
    if (typeof found === 'string') {
      fault.value = codeFaults[found];
      lookAtFault();
    } else if (found.entered) turnTo('marking', { sitting: found.entered.sat.id });
    else onFind(found);
  }

  return (
    <>
      <form ref={form} class="find-sheet" onSubmit={find} noValidate>
        <Field label={resultWords.code} hint={resultWords.codeHint} value={code} fault={fault.value} digits />
      </form>
      {printed.length === 0 && <p>{resultWords.none}</p>}
      {open.length > 0 && fitting.length === 0 && <p role="status">{resultWords.noMatch}</p>}
      {fitting.length > 0 && <p class="hint">{resultWords.lead}</p>}
      {byDay(fitting.slice(0, shown.value)).map(([day, sheets]) => (
        <section key={day}>
          <h2 class="day">{day === desk.today.value ? resultWords.today(shortDay(day)) : longDay(day)}</h2>
          <ul class="bare found-sheets">
            {sheets.map((found) => (
              <li key={found.record}>
                <button type="button" class="found" onClick={() => onFind(found)}>
                  <SheetLine desk={desk} found={found} />
                </button>
                <Reprint found={found} />
              </li>
            ))}
          </ul>
        </section>
      ))}
      {fitting.length > shown.value && (
        <button
          type="button"
          onClick={() => {
            shown.value += pageful;
          }}
        >
          {resultWords.older}
        </button>
      )}
      {entered.length > 0 && (
        <details>
          <summary>{resultWords.entered}</summary>
          <ul class="bare found-sheets">
            {entered.slice(0, shown.value).map((found) => (
              <li key={found.record}>
                <span>
                  {shortDay(found.sheet.day)}, <SheetLine desk={desk} found={found} />
                </span>
                <button
                  type="button"
                  class="quiet"
                  onClick={() => turnTo('marking', { sitting: found.entered?.sat.id ?? null })}
                >
                  {resultWords.read}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function SheetLine({ desk, found: { sheet } }: { readonly desk: Desk; readonly found: FoundSheet }) {
  const household = desk.household.value;
  const name = nameOf(household, sheet.child);
  return (
    <>
      {resultWords.sheet(name, setName(household, sheet.set), sheet.facts.length)}{' '}
      <span class="hint code">{codeOf(sheet)}</span>
    </>
  );
}

function Reprint({ found: { sheet } }: { readonly found: FoundSheet }) {
  return (
    <button
      type="button"
      class="quiet"
      aria-label={`${resultWords.reprint}: ${codeOf(sheet)}`}
      onClick={() => {
        turnToPart('print', { again: [sheet] });
      }}
    >
      {resultWords.reprint}
    </button>
  );
}

function byDay(sheets: readonly FoundSheet[]): readonly (readonly [string, readonly FoundSheet[]])[] {
  const days = new Map<string, FoundSheet[]>();
  for (const found of sheets) days.set(found.sheet.day, [...(days.get(found.sheet.day) ?? []), found]);
  return [...days];
}
