import type { OnsetSource } from '../core/record/sat';

/** Told when a card became visible, ms on the page's monotonic clock; told again when a better source speaks. */
export type OnShown = (atMs: number, by: OnsetSource) => void;

/** The name under which Element Timing reports a card. */
export const cardTiming = 'card';

/** The step of Element Timing's clock in a page that is not isolated; it rounds up, so half of it comes off. */
const coarseStepMs = 4;

interface PerformanceElementTiming extends PerformanceEntry {
  readonly identifier: string;
  readonly id: string;
  readonly renderTime: number;
}

const waiting = new Map<string, OnShown>();
let observer: PerformanceObserver | null = null;

/**
 * Call in the layout effect of a card's first render. First tells the clock as read in the frame callback after the
 * commit; where the browser has Element Timing it tells the true moment of painting one or two frames later. Nothing
 * is told of a card that has gone.
 */
export function watchOnset(elementId: string, onShown: OnShown): () => void {
  observe();
  waiting.set(elementId, onShown);
  const frame = requestAnimationFrame(() => onShown(performance.now(), 'frame'));
  return () => {
    waiting.delete(elementId);
    cancelAnimationFrame(frame);
  };
}

function observe(): void {
  if (observer || !PerformanceObserver.supportedEntryTypes.includes('element')) return;
  observer = new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as PerformanceElementTiming[]) {
      if (entry.identifier !== cardTiming || entry.renderTime === 0) continue;
      const onShown = waiting.get(entry.id);
      waiting.delete(entry.id);
      if (crossOriginIsolated) onShown?.(entry.renderTime, 'element');
      else onShown?.(entry.renderTime - coarseStepMs / 2, 'elementCoarse');
    }
  });
  observer.observe({ type: 'element', buffered: false });
}
