import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { longDay } from '../parts/when';
import { turnTo } from '../place';
import { listed } from '../words';
import { schoolYearName } from './school-year';
import { yearWords } from './words';

const longestName = 40;

/** The school year: begun here, and the children who go on into it or leave. */
export function YearsSection({ desk }: { readonly desk: Desk }) {
  const { children, years } = desk.household.value;
  const today = desk.today.value;
  const acting = useActing();
  const name = useSignal(schoolYearName(today));
  const fault = useSignal<string | null>(null);
  const year = years.findLast(({ begins }) => begins <= today);
  const here = children.filter(({ archived }) => !archived).map((child) => child.name);

  function begin(event: Event) {
    event.preventDefault();
    const typed = name.value.trim();
    fault.value = typed === '' || typed.length > longestName ? yearWords.fault : null;
    if (fault.value !== null) return;
    void acting.record(desk, [{ kind: 'yearBegun', day: today, name: typed }], yearWords.begun(typed));
  }

  return (
    <section aria-label={yearWords.title}>
      <h2>{yearWords.title}</h2>
      <p>{year ? yearWords.now(year.name, longDay(year.begins)) : yearWords.none}</p>
      <p>{yearWords.lead}</p>
      {here.length > 0 && (
        <p>
          {yearWords.goOn(listed(here))}{' '}
          <button type="button" class="link" onClick={() => turnTo('children')}>
            {yearWords.toChildren}
          </button>
        </p>
      )}
      <form onSubmit={begin} noValidate>
        <Field label={yearWords.name} value={name} fault={fault.value} />
        <div class="actions">
          <button type="submit" aria-disabled={acting.isBusy.value}>
            {yearWords.begin}
          </button>
        </div>
      </form>
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
    </section>
  );
}
