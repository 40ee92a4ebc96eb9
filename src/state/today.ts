import { type ReadonlySignal, signal } from '@preact/signals';
import { formatISO } from 'date-fns';
import type { Day } from '../core/record/stamp';
import type { Ports } from './ports';

const lookEveryMs = 30_000;

/** The local date, looked at anew while the page is open; `look` at once, before a step is planned. */
export interface Today {
  readonly day: ReadonlySignal<Day>;
  look(): Day;
}

export function watchToday(ports: Ports): Today {
  const read = (): Day => formatISO(ports.now(), { representation: 'date' });
  const day = signal(read());
  const look = () => {
    day.value = read();
    return day.value;
  };
  const lookAgain = () => {
    look();
    ports.after(lookEveryMs, lookAgain);
  };
  ports.after(lookEveryMs, lookAgain);
  return { day, look };
}
