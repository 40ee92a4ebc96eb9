import { useLayoutEffect, useRef } from 'preact/hooks';
import './thread.css';

export interface ThreadProps {
  readonly allowanceMs: number;
  /** How much of the allowance has gone at the moment of this render. */
  readonly elapsedMs: number;
  readonly running: boolean;
}

const stepMs = 3_000;

/**
 * The clock, seen: a thread drawn through the hem, a needle at its end. One animation from end to end, left to the
 * browser: no timer ticks and nothing renders while a child answers. It says nothing to a screen reader either.
 */
export function Thread({ allowanceMs, elapsedMs, running }: ThreadProps) {
  const drawn = useRef<HTMLDivElement>(null);
  const held = useRef<HTMLDivElement>(null);
  const animations = useRef<readonly Animation[]>([]);

  useLayoutEffect(() => {
    const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const easing = isStill ? `steps(${Math.max(1, Math.round(allowanceMs / stepMs))})` : 'linear';
    const timing = { duration: allowanceMs, easing, fill: 'both' } as const;
    // The window opens to the right while what is in it moves back: the stitches stand still, the needle moves.
    const opening = drawn.current?.animate({ transform: ['translateX(-100%)', 'none'] }, timing);
    const standing = held.current?.animate({ transform: ['translateX(100%)', 'none'] }, timing);
    animations.current = [opening, standing].filter((one) => one !== undefined);
    return () => {
      for (const one of animations.current) one.cancel();
    };
  }, [allowanceMs]);

  useLayoutEffect(() => {
    for (const one of animations.current) {
      one.currentTime = Math.min(elapsedMs, allowanceMs);
      if (running) one.play();
      else one.pause();
    }
  }, [allowanceMs, elapsedMs, running]);

  return (
    <div class="thread-run" aria-hidden="true">
      <div class="thread-drawn" ref={drawn}>
        <div class="thread-window">
          <div class="thread-held" ref={held} />
        </div>
        <svg class="needle" viewBox="0 0 64 12" aria-hidden="true">
          <path class="needle-steel" d="M0 6Q6 1.5 16 3L64 6L16 9Q6 10.5 0 6Z" />
          <path class="needle-eye" d="M6 6H14" />
        </svg>
      </div>
    </div>
  );
}
