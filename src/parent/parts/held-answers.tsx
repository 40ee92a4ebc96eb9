import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { giveOut } from '../record-book/give-out';
import { partWords } from './words';

/** While something cannot be stored: what that means, and a file of everything to be on the safe side. */
export function HeldAnswers({ desk }: { readonly desk: Desk }) {
  const saved = useSignal<string | null>(null);
  async function save() {
    const file = await desk.heldFile();
    const given = await giveOut(file);
    if (given !== 'givenUp') saved.value = partWords.heldSaved(file.name);
  }
  return (
    <>
      <p class="trouble">
        {partWords.held}{' '}
        <button type="button" onClick={save}>
          {partWords.saveHeld}
        </button>
      </p>
      <p role="status">{saved}</p>
    </>
  );
}
