import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { storageText } from '../parts/storage-words';
import { setupStep } from './progress';
import { setupWords } from './words';

/** Where the household will live, told before anything is put there. */
export function StorageStep({ desk }: { readonly desk: Desk }) {
  const isInstalled = matchMedia('(display-mode: standalone), (display-mode: fullscreen)').matches;
  const isKept = desk.storage.value.persisted === true;

  function goOn() {
    // The answer comes with the storage's state; some browsers ask only after a touch or key.
    void navigator.storage?.persist?.();
    setupStep.value = { at: 'pin' };
  }

  return (
    <>
      <Heading>{setupWords.steps.storage}</Heading>
      <p>{isInstalled ? setupWords.isInstalled : setupWords.homeScreen}</p>
      {!isInstalled && <p class="hint">{setupWords.howToInstall}</p>}
      <p>{storageText(isKept)}</p>
      <p>{setupWords.staysHere}</p>
      <div class="actions">
        <button type="button" class="main" onClick={goOn}>
          {setupWords.goOn}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            setupStep.value = { at: 'restore' };
          }}
        >
          {setupWords.restore}
        </button>
      </div>
    </>
  );
}
