import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import type { PaperPartProps } from './paper-page';
import { paperPlace, turnToPart } from './paper-place';
import { planPrints, printedDraft } from './plan-prints';
import { firstForm, PrintForm } from './print-form';
import { Prints } from './prints';
import { printWords } from './words';

/** What is to be printed, chosen and shown; sheets are written down as they go to the printer. */
export function PrintPart({ desk, history }: PaperPartProps) {
  const household = desk.household.value;
  const acting = useActing();
  const { again } = paperPlace.value;
  const form = useSignal(firstForm(household, desk.today.value));
  const { what, who, from, days, set } = form.value;
  const planned = useMemo(() => {
    const children = household.children.filter(({ id }) => who.has(id));
    return what === 'sheets' ? planPrints(household, history, { children, from, days, set }) : [];
  }, [household, history, what, who, from, days, set]);
  const sheets = again ?? planned;

  async function print() {
    if (what === 'sheets' && !again) {
      if (planned.length === 0) return;
      const isKept = await acting.record(
        desk,
        planned.map((sheet) => printedDraft(sheet, desk.today.value)),
        printWords.printed(planned.length),
      );
      if (!isKept) return;
      // What was written down is what is printed, and what is printed again.
      turnToPart('print', { again: planned });
    }
    // The page must stand before it is printed.
    requestAnimationFrame(() => requestAnimationFrame(() => window.print()));
  }

  return (
    <>
      <div class="no-print print-form">
        <Done desk={desk} acting={acting} />
        <Trouble sentence={acting.trouble} />
        {!again && <PrintForm desk={desk} form={form} />}
        {what === 'sheets' && sheets.length === 0 && <p>{printWords.nothing}</p>}
        <div class="actions">
          <button type="button" class="main" aria-disabled={acting.isBusy.value} onClick={print}>
            {again
              ? printWords.again
              : what === 'sheets'
                ? printWords.printSheets(sheets.length)
                : printWords.print}
          </button>
          {again && (
            <button
              type="button"
              class="quiet"
              onClick={() => {
                turnToPart('print');
              }}
            >
              {printWords.more}
            </button>
          )}
        </div>
        {what === 'cards' && !again && <p class="hint">{printWords.both}</p>}
        <p class="hint">{printWords.dialog}</p>
      </div>
      <Prints
        desk={desk}
        history={history}
        form={form.value}
        what={again ? 'sheets' : what}
        sheets={sheets}
      />
    </>
  );
}
