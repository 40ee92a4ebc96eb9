import type { RuledSat } from '../../core/household/history';
import { type ReadError, readError } from '../../readings/errors/read-error';
import type { PlacedError } from '../../readings/errors/wrong-answers-of';
import { wrongIn } from '../../readings/errors/wrong-on-sheets';
import type { ChildReading } from './child-reading';

/** A wrong answer with what it looks like. */
export interface Cause {
  readonly error: PlacedError;
  readonly read: ReadError;
}

/** What was wrong or skipped in a sitting, by its place. */
export function causesOf(
  reading: Pick<ChildReading, 'child'>,
  ruled: Pick<RuledSat, 'sat' | 'rulings'>,
): ReadonlyMap<number, Cause> {
  return new Map(wrongIn(reading, ruled).map((error) => [error.place, { error, read: readError(error) }]));
}
