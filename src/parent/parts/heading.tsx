import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** A page's or step's title; it takes the focus when it appears, so that a screen reader begins there. */
export function Heading({ children }: { readonly children: ComponentChildren }) {
  const title = useRef<HTMLHeadingElement>(null);
  // Before the paint: later it would take the focus from a field somebody has begun to type in.
  useLayoutEffect(() => title.current?.focus(), []);
  return (
    <h1 ref={title} tabIndex={-1}>
      {children}
    </h1>
  );
}
