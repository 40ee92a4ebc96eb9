import type { ComponentChildren, TargetedEvent } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

export interface ActionProps {
  readonly onPress: () => void;
  readonly children: ComponentChildren;
  /** Beside the next thing to do, or instead of it. */
  readonly plain?: boolean;
  /** Leads away from the child's screens, so that the page needn't fill the screen. */
  readonly leaves?: boolean;
}

/** A press that comes sooner was meant for the screen before: the second of a double tap, or of a double Enter. */
const meantForBeforeMs = 400;

/** What a child may press under a picture: big is the next thing to do, and has the focus from the start. */
export function Action({ onPress, children, plain = false, leaves = false }: ActionProps) {
  const button = useRef<HTMLButtonElement>(null);
  const upSinceMs = useRef(0);
  useLayoutEffect(() => {
    upSinceMs.current = performance.now();
    if (!plain) button.current?.focus({ preventScroll: true });
  }, []);
  return (
    <button
      ref={button}
      type="button"
      class={plain ? 'plain' : 'big'}
      {...(plain ? {} : { 'aria-describedby': 'step-title' })}
      {...(leaves ? { 'data-leaves': true } : {})}
      onKeyDown={refuseHeld}
      onClick={({ timeStamp }) => {
        if (leaves || timeStamp - upSinceMs.current >= meantForBeforeMs) onPress();
      }}
    >
      {children}
    </button>
  );
}

// A key held down would press again and again, screen after screen.
function refuseHeld(event: TargetedEvent<HTMLButtonElement, KeyboardEvent>): void {
  if (event.repeat) event.preventDefault();
}
