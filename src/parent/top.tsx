import { useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import type { Desk } from '../state/desk';
import { type Page, pages, place, turnTo } from './place';
import { insideWords } from './words';

export interface TopProps {
  readonly desk: Desk;
  /** Leaves the demo household; `null` at home. */
  readonly onLeaveBoat: (() => void) | null;
}

/** The pages by name and the lock; on a narrow screen the names are behind the one of the page that is open. */
export function Top({ desk, onLeaveBoat }: TopProps) {
  const isOpen = useSignal(false);
  const list = useId();
  const opener = useRef<HTMLButtonElement>(null);
  const at = place.value.page;

  function turn(page: Page) {
    isOpen.value = false;
    turnTo(page);
  }

  function closeBy({ key }: KeyboardEvent) {
    if (key !== 'Escape' || !isOpen.value) return;
    isOpen.value = false;
    opener.current?.focus();
  }

  return (
    <header>
      {onLeaveBoat && (
        <p class="on-boat no-print">
          {insideWords.boat}{' '}
          <button type="button" class="link" onClick={onLeaveBoat}>
            {insideWords.leaveBoat}
          </button>
        </p>
      )}
      <div class="top">
        <nav aria-label={insideWords.pages} onKeyDown={closeBy}>
          <button
            ref={opener}
            type="button"
            class="pages-opener"
            aria-expanded={isOpen.value}
            aria-controls={list}
            aria-label={insideWords.openPages(insideWords.page[at])}
            onClick={() => {
              isOpen.value = !isOpen.value;
            }}
          >
            {insideWords.page[at]}
            <svg viewBox="0 0 12 8" width="12" height="8" aria-hidden="true">
              <path
                d="M1 1l5 5 5-5"
                fill="none"
                stroke="currentColor"
                stroke-width="2"
                stroke-linecap="round"
              />
            </svg>
          </button>
          <ul id={list} class={isOpen.value ? 'is-open' : ''}>
            {pages.map((page) => (
              <li key={page}>
                <button
                  type="button"
                  aria-current={page === at ? 'page' : undefined}
                  onClick={() => turn(page)}
                >
                  {insideWords.page[page]}
                </button>
              </li>
            ))}
          </ul>
        </nav>
        <button type="button" class="lock" onClick={() => desk.lock()}>
          {insideWords.lock}
        </button>
      </div>
    </header>
  );
}
