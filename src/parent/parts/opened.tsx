import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';

export interface OpenedProps {
  readonly title: string;
  readonly children: () => ComponentChildren;
}

/** Something long behind a title, made only once it is opened. */
export function Opened({ title, children }: OpenedProps) {
  const isOpen = useSignal(false);
  return (
    <details
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>{title}</summary>
      {isOpen.value && children()}
    </details>
  );
}
