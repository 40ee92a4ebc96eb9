import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { Action } from '../../src/child/action';
import { Shell } from '../../src/child/shell';
import '../../src/ui/tokens.css';

afterEach(() => {
  cleanup();
  document.documentElement.removeAttribute('data-by-keys');
});

const wait = (ms: number) => new Promise((done) => setTimeout(done, ms));
const no = () => undefined;

/** A press whose own time stamp lies so long after now, ms. */
function pressAfter(button: HTMLElement, ms: number): void {
  const click = new MouseEvent('click', { bubbles: true });
  Object.defineProperty(click, 'timeStamp', { value: performance.now() + ms });
  button.dispatchEvent(click);
}

describe('a big button', () => {
  it('takes no press in its first 400 ms, which was meant for the screen before', () => {
    const onPress = vi.fn();
    render(<Action onPress={onPress}>Begin</Action>);
    const button = screen.getByRole('button');
    pressAfter(button, -20);
    pressAfter(button, 0);
    pressAfter(button, 350);
    expect(onPress).not.toHaveBeenCalled();
    pressAfter(button, 400);
    expect(onPress).toHaveBeenCalledOnce();
  });

  it('leads to the grown-ups at once', () => {
    const onPress = vi.fn();
    render(
      <Action leaves onPress={onPress}>
        Begin
      </Action>,
    );
    pressAfter(screen.getByRole('button'), 0);
    expect(onPress).toHaveBeenCalledOnce();
  });

  it('has the focus from the start, so that Enter goes on, but a key held down does not', async () => {
    const onPress = vi.fn();
    render(
      <>
        <Action plain onPress={no}>
          Back
        </Action>
        <Action onPress={onPress}>Begin</Action>
      </>,
    );
    const button = screen.getByRole('button', { name: 'Begin' });
    expect(document.activeElement).toBe(button);
    const held = new KeyboardEvent('keydown', {
      key: 'Enter',
      repeat: true,
      bubbles: true,
      cancelable: true,
    });
    expect(button.dispatchEvent(held)).toBe(false);
    await userEvent.keyboard('{Enter}');
    expect(onPress).not.toHaveBeenCalled();
    await wait(410);
    await userEvent.keyboard('{Enter}');
    expect(onPress).toHaveBeenCalledOnce();
  });

  it('has its focus drawn for who works with keys, and not for fingers', async () => {
    render(
      <Shell name="step-screen">
        <Action onPress={no}>Begin</Action>
      </Shell>,
    );
    const ring = () => getComputedStyle(screen.getByRole('button')).outlineStyle;
    expect(ring()).toBe('none');
    await userEvent.keyboard('{ArrowDown}');
    expect(ring()).toBe('solid');
    document.body.dispatchEvent(new Event('pointerdown', { bubbles: true }));
    expect(ring()).toBe('none');
  });
});
