import type { Signal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { SchoolYear } from '../../../core/household/household';
import type { Day } from '../../../core/record/stamp';
import { daysBefore } from './days-before';
import type { Span } from './term';
import { reportWords } from './words';

export interface SpanChoiceProps {
  readonly span: Signal<Span>;
  readonly years: readonly SchoolYear[];
  readonly today: Day;
}

/** The days a report is about: any two, or a school year. */
export function SpanChoice({ span, years, today }: SpanChoiceProps) {
  const id = useId();
  const set = (ends: Partial<Span>) => {
    // A date field that was emptied keeps the day it had.
    span.value = { ...span.value, ...ends };
  };
  return (
    <fieldset class="no-print report-span">
      <label for={`${id}-from`}>{reportWords.from}</label>
      <input
        id={`${id}-from`}
        type="date"
        value={span.value.from}
        max={today}
        onChange={({ currentTarget: { value } }) => value !== '' && set({ from: value })}
      />
      <label for={`${id}-to`}>{reportWords.to}</label>
      <input
        id={`${id}-to`}
        type="date"
        value={span.value.to}
        onChange={({ currentTarget: { value } }) => value !== '' && set({ to: value })}
      />
      {years.map(({ id: year, name, begins }, index) => (
        <button
          key={year}
          type="button"
          onClick={() => set({ from: begins, to: endOf(years[index + 1], today) })}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}

function endOf(next: SchoolYear | undefined, today: Day): Day {
  return next ? daysBefore(next.begins, 1) : today;
}
