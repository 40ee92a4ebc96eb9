import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Thread } from '../../src/ui/thread';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const run = () => document.querySelector('.thread-run');
const easings = () => document.getAnimations().map((one) => one.effect?.getTiming().easing);

describe('the thread', () => {
  it('says no number to eye or ear', () => {
    render(<Thread allowanceMs={45_000} elapsedMs={12_000} running />);
    expect(run()?.textContent).toBe('');
    expect(run()?.getAttribute('aria-hidden')).toBe('true');
    expect(run()?.querySelectorAll('[role], [aria-valuenow], [aria-label]')).toHaveLength(0);
  });

  it('moves evenly from end to end over the whole allowance and then stays', () => {
    render(<Thread allowanceMs={45_000} elapsedMs={0} running />);
    expect(easings()).toEqual(['linear', 'linear']);
    for (const one of document.getAnimations()) {
      expect(one.effect?.getTiming()).toMatchObject({ duration: 45_000, iterations: 1, fill: 'both' });
      expect(one.playState).toBe('running');
    }
  });

  it('stands where the elapsed time puts it', () => {
    render(<Thread allowanceMs={40_000} elapsedMs={10_000} running={false} />);
    const place = (selector: string) =>
      new DOMMatrix(getComputedStyle(document.querySelector(selector) ?? document.body).transform).e;
    const width = run()?.getBoundingClientRect().width ?? 0;
    expect(place('.thread-drawn')).toBeCloseTo(-0.75 * width, 0);
    // What is in the window moves back as far, so the stitches stand still.
    expect(place('.thread-held')).toBeCloseTo(0.75 * width, 0);
    expect(document.getAnimations().map((one) => one.playState)).toEqual(['paused', 'paused']);
  });

  it('goes on in the same animations', () => {
    const { rerender } = render(<Thread allowanceMs={40_000} elapsedMs={0} running={false} />);
    const before = document.getAnimations();
    rerender(<Thread allowanceMs={40_000} elapsedMs={0} running />);
    expect(document.getAnimations()).toEqual(before);
    expect(before[0]?.playState).toBe('running');
  });

  it('changes no colour', () => {
    render(<Thread allowanceMs={45_000} elapsedMs={0} running />);
    const moved = document
      .getAnimations()
      .flatMap((one) => (one.effect as KeyframeEffect).getKeyframes().flatMap((frame) => Object.keys(frame)));
    expect(new Set(moved)).toEqual(new Set(['transform', 'offset', 'computedOffset', 'easing', 'composite']));
  });

  it('steps every three seconds where motion is unwelcome', () => {
    vi.spyOn(window, 'matchMedia').mockReturnValue({ matches: true } as MediaQueryList);
    render(<Thread allowanceMs={45_000} elapsedMs={0} running />);
    expect(easings()).toEqual(['steps(15)', 'steps(15)']);
  });
});
