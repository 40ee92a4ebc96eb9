import { signal } from '@preact/signals';
import { act, cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { BellSign } from '../../src/child/bell-sign';
import { Shell } from '../../src/child/shell';
import { Thread } from '../../src/ui/thread';
import '../../src/ui/tokens.css';

afterEach(cleanup);

function show(isSeen: boolean) {
  const rang = signal(false);
  const clock = isSeen ? { allowanceMs: 1_000, elapsedMs: 1_000, running: false } : null;
  render(
    <Shell
      name="card-screen"
      hem={
        <>
          <BellSign rang={rang} hasThread={isSeen} />
          {clock && <Thread {...clock} />}
        </>
      }
    >
      <p />
    </Shell>,
  );
  const ring = () =>
    act(() => {
      rang.value = true;
    });
  return { ring };
}

const sign = () => document.querySelector('.bell-sign');
const needle = () => document.querySelector('.needle') ?? document.body;

describe('the sign that the bell has rung', () => {
  it('is not there before', () => {
    show(true);
    expect(sign()).toBeNull();
    expect(screen.getByRole('status').textContent).toBe('');
    expect(getComputedStyle(needle()).visibility).toBe('visible');
  });

  it('ties off the thread where the needle was, and has a bell beside it', () => {
    const { ring } = show(true);
    ring();
    expect(sign()?.querySelector('.tied')).not.toBeNull();
    expect(sign()?.querySelector('.bell')).not.toBeNull();
    expect(getComputedStyle(needle()).visibility).toBe('hidden');
  });

  it('is the bell alone where the clock is hidden', () => {
    const { ring } = show(false);
    ring();
    expect(sign()?.querySelector('.bell')).not.toBeNull();
    expect(sign()?.querySelector('.tied')).toBeNull();
  });

  it('stands still, in the hem, and is heard once', () => {
    const { ring } = show(false);
    ring();
    expect(sign()?.getAnimations({ subtree: true })).toEqual([]);
    const hem = document.querySelector('.bottom-hem')?.getBoundingClientRect() ?? new DOMRect();
    const at = sign()?.getBoundingClientRect() ?? new DOMRect();
    expect(at.top).toBeGreaterThanOrEqual(hem.top);
    expect(at.bottom).toBeLessThanOrEqual(hem.bottom);
    expect(screen.getByRole('status').textContent).toBe('Finish this one');
  });
});
