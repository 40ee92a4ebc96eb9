import type { RuledSat } from '../../core/household/history';
import { type ReadError, readError } from '../../readings/errors/read-error';
import { type PlacedError, wrongAnswersOf } from '../../readings/errors/wrong-answers-of';
import type { ChildReading } from './child-reading';

/** A wrong answer with what it looks like. */
export interface Cause {
  readonly error: PlacedError;
  readonly read: ReadError;
}

/** What was wrong or skipped in a sitting, by its place. */
export function causesOf(
  { child, reach }: Pick<ChildReading, 'child' | 'reach'>,
  ruled: Pick<RuledSat, 'sat' | 'rulings'>,
): ReadonlyMap<number, Cause> {
  const errors = wrongAnswersOf(ruled, child.settings.keypad, reach);
  return new Map(errors.map((error) => [error.place, { error, read: readError(error) }]));
}
