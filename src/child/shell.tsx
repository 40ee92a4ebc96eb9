import type { ComponentChildren } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { Thread, type ThreadProps } from '../ui/thread';
import { WovenEdge } from '../ui/woven-edge';
import { fillScreen, guardPage, keepAwake } from './guards';
import './shell.css';
import { words } from './words';

export interface ShellProps {
  readonly children: ComponentChildren;
  /** The child's own edge along the top, once it is known whose turn it is. */
  readonly edge?: number;
  /** The clock in the hem; the hem itself is always there. */
  readonly clock?: ThreadProps | null;
  readonly name: string;
  readonly onGrownUps?: () => void;
}

/** What is around every child's screen: a selvedge, a hem, the grown-ups' knot, and nothing a stray hand can break. */
export function Shell({ children, edge, clock = null, name, onGrownUps }: ShellProps) {
  useLayoutEffect(() => {
    const stops = [guardPage(document), fillScreen(document), keepAwake(document)];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
  return (
    <main class={`screen linen ${name}`}>
      <div class="selvedge">{edge !== undefined && <WovenEdge edge={edge} height={26} />}</div>
      {onGrownUps && (
        <button type="button" data-leaves class="knot" aria-label={words.grownUps} onClick={onGrownUps}>
          <svg viewBox="0 0 32 32" aria-hidden="true">
            <path d="M3 21c6 2 10-1 13-6s7-8 9-4-3 8-9 7-8-5-6-9 7-3 9 2 3 11 10 12" />
          </svg>
        </button>
      )}
      {children}
      <div class="bottom-hem">{clock && <Thread {...clock} />}</div>
    </main>
  );
}
