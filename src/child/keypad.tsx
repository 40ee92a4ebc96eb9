import type { Key } from '../core/record/sat';
import type { ChildSettings } from '../core/record/settings';
import './keypad.css';
import { type KeyIntent, readPress } from './keys';
import { words } from './words';

export interface KeypadProps {
  readonly order: ChildSettings['keypad'];
  readonly hand: ChildSettings['hand'];
  readonly onKey: (intent: KeyIntent) => void;
}

const rows: Record<ChildSettings['keypad'], readonly (readonly Key[])[]> = {
  phone: [
    ['1', '2', '3'],
    ['4', '5', '6'],
    ['7', '8', '9'],
  ],
  calculator: [
    ['7', '8', '9'],
    ['4', '5', '6'],
    ['1', '2', '3'],
  ],
};

// One beside each row, on the side of the hand; `done` reaches down beside the nought.
const others = ['back', 'skip', 'done'] as const;

/** Digits and three more keys, acting on press. The keyboard does all of it too, so Tab passes it by. */
export function Keypad({ order, hand, onKey }: KeypadProps) {
  const keys = rows[order].flatMap((digits, row): readonly Key[] => {
    const other = others[row];
    if (!other) return digits;
    return hand === 'right' ? [...digits, other] : [other, ...digits];
  });
  return (
    <div class="keypad">
      {[...keys, '0' as const].map((key) => (
        <button
          key={key}
          type="button"
          tabIndex={-1}
          class={`key key-${key}`}
          aria-label={labels[key]}
          onPointerDown={(event) => press(event, key, onKey)}
          onPointerUp={release}
          onPointerCancel={release}
          onPointerLeave={release}
          // A press with the mouse must not take the focus, or the space bar would press again.
          onMouseDown={(event) => event.preventDefault()}
          onClick={(event) => {
            // A click without a finger or a mouse is a switch or a screen reader.
            if (event.detail === 0) onKey({ key, atMs: event.timeStamp, via: 'touch' });
          }}
        >
          {faces[key] ?? key}
        </button>
      ))}
    </div>
  );
}

type Press = PointerEvent & { readonly currentTarget: HTMLButtonElement };

function press(event: Press, key: Key, onKey: (intent: KeyIntent) => void): void {
  const intent = readPress(event, key);
  if (!intent) return;
  event.currentTarget.dataset['down'] = '';
  onKey(intent);
}

function release(event: Press): void {
  delete event.currentTarget.dataset['down'];
}

const labels: Partial<Record<Key, string>> = { back: words.rubOut };

const faces: Partial<Record<Key, preact.ComponentChildren>> = {
  back: (
    <svg viewBox="0 0 40 24" aria-hidden="true">
      <path d="M36 12H6M14 4L6 12L14 20" />
    </svg>
  ),
  skip: (
    <>
      <svg viewBox="0 0 40 24" aria-hidden="true">
        <path d="M4 18C8 2 30 2 34 16M28 12L34.5 17.500L38 10" />
        <path class="passed" d="M13 20H26" />
      </svg>
      <span>{words.later}</span>
    </>
  ),
  done: words.done,
};
