import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { Trouble } from '../parts/trouble';
import type { Table } from './csv/write-csv';
import { giveOut } from './give-out';
import { backupWords, csvWords } from './words';

/** Sittings and answers as tables for a spreadsheet. */
export function CsvSection({ desk }: { readonly desk: Desk }) {
  const { act, isBusy, trouble } = useActing();
  const says = useSignal<string | null>(null);
  const { value: history } = desk.history;

  const make = (table: Table) =>
    act(async () => {
      if (!history) return;
      says.value = csvWords.making;
      try {
        const { writeCsv } = await import('./csv/write-csv');
        const blob = await writeCsv(table, desk.household.value, history);
        const name = `sumstitch-${table}-${desk.today.value}.csv`;
        const how = await giveOut(new File([blob], name, { type: 'text/csv' }));
        says.value = how === 'givenUp' ? backupWords.givenUp : csvWords.made(name);
      } catch (error) {
        says.value = null;
        throw error;
      }
    });

  return (
    <section aria-label={csvWords.title} class="no-print">
      <h2>{csvWords.title}</h2>
      <p>{csvWords.lead}</p>
      <div class="actions">
        <button type="button" aria-disabled={isBusy.value || !history} onClick={() => make('sittings')}>
          {csvWords.sittings}
        </button>
        <button type="button" aria-disabled={isBusy.value || !history} onClick={() => make('answers')}>
          {csvWords.answers}
        </button>
      </div>
      <p class="kept" role="status">
        {says.value}
      </p>
      <Trouble sentence={trouble} />
    </section>
  );
}
