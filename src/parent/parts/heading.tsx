import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** A page's or step's title; it takes the focus when it appears, so that a screen reader begins there. */
export function Heading({ children }: { readonly children: ComponentChildren }) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);
  return (
    <h1 ref={title} tabIndex={-1}>
      {children}
    </h1>
  );
}
