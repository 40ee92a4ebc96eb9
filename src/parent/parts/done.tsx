import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { partWords } from './words';

export interface DoneProps {
  readonly desk: Desk;
  readonly acting: Acting;
}

/** What was just recorded, with its Undo; it takes the focus of a button that went with it. */
export function Done({ desk, acting }: DoneProps) {
  const done = acting.done.value;
  return (
    <p class="kept" role="status" tabIndex={-1}>
      {done?.says}
      {done && done.records.length > 0 && (
        <>
          {' '}
          <button type="button" class="link undo no-print" onClick={() => acting.takeBack(desk)}>
            {partWords.undo}
          </button>
        </>
      )}
    </p>
  );
}
