import type { ReadonlySignal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';
import { Thread, type ThreadProps } from '../ui/thread';
import { BellSign } from './bell-sign';
import { Card, type CardProps } from './card';
import './card-screen.css';
import { Keypad, type KeypadProps } from './keypad';
import { listenToKeyboard } from './keys';
import { Shell } from './shell';
import { words } from './words';

export interface CardScreenProps extends CardProps, KeypadProps {
  readonly edge?: number;
  /** The clock where it is seen; `null` where it is hidden or there is none. */
  readonly clock: ThreadProps | null;
  readonly rang: ReadonlySignal<boolean>;
  readonly onGrownUps: () => void;
}

/** One card and the means to answer it, whatever the step. `onKey` and `onShown` stay the same functions. */
export function CardScreen({
  face,
  entry,
  layout,
  onShown,
  wayTo,
  order,
  hand,
  onKey,
  edge,
  clock,
  rang,
  onGrownUps,
}: CardScreenProps) {
  useLayoutEffect(() => listenToKeyboard(onKey), [onKey]);
  return (
    <Shell
      name={`card-screen ${hand}`}
      hem={
        <>
          <BellSign rang={rang} hasThread={clock !== null} />
          {clock && <Thread {...clock} />}
        </>
      }
      onGrownUps={onGrownUps}
      {...(edge === undefined ? {} : { edge })}
    >
      <div class="table">
        <h1 class="only-heard">{words.app}</h1>
        <Card face={face} entry={entry} layout={layout} onShown={onShown} {...(wayTo ? { wayTo } : {})} />
        <Keypad order={order} hand={hand} onKey={onKey} />
      </div>
    </Shell>
  );
}
