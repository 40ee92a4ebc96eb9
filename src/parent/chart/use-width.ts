import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

const usual = 640;
const least = 240;

/** The width of a frame in px, followed as it changes, so that the writing in a chart keeps its size. */
export function useWidth(): { readonly frame: RefObject<HTMLDivElement | null>; readonly width: number } {
  const frame = useRef<HTMLDivElement>(null);
  const width = useSignal(usual);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return undefined;
    const look = () => {
      const now = Math.round(element.clientWidth);
      if (now > 0) width.value = Math.max(least, now);
    };
    look();
    const watch = new ResizeObserver(look);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { frame, width: width.value };
}
