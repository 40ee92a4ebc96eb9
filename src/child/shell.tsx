import type { ComponentChildren } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { Knot } from '../ui/knot';
import { WovenEdge } from '../ui/woven-edge';
import { fillScreen, guardPage, keepAwake, watchHands } from './guards';
import './shell.css';
import { words } from './words';

export interface ShellProps {
  readonly children: ComponentChildren;
  /** The child's own edge along the top, once it is known whose turn it is. */
  readonly edge?: number;
  /** What is in the hem, such as the clock; the hem itself is always there. */
  readonly hem?: ComponentChildren;
  readonly name: string;
  readonly onGrownUps?: () => void;
  /** Prints the knot's word beside it, where a grown-up looks for a way in. */
  readonly isKnotNamed?: boolean;
}

/** What is around every child's screen: a selvedge, a hem, the grown-ups' knot, and nothing a stray hand can break. */
export function Shell({ children, edge, hem, name, onGrownUps, isKnotNamed = false }: ShellProps) {
  useLayoutEffect(() => {
    const stops = [guardPage(document), fillScreen(document), keepAwake(document), watchHands(document)];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
  return (
    <main class={`screen linen ${name}`}>
      <div class="selvedge">{edge !== undefined && <WovenEdge edge={edge} height={26} />}</div>
      {children}
      <div class="bottom-hem">{hem}</div>
      {/* Last, so that a child who presses Tab comes to its own buttons first. */}
      {onGrownUps && (
        <button
          type="button"
          data-leaves
          class={isKnotNamed ? 'knot named' : 'knot'}
          {...(isKnotNamed ? {} : { 'aria-label': words.grownUps })}
          onClick={onGrownUps}
        >
          <Knot />
          {isKnotNamed && <span>{words.grownUps}</span>}
        </button>
      )}
    </main>
  );
}
