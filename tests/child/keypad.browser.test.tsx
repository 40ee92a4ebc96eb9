import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Keypad, type KeypadProps } from '../../src/child/keypad';
import type { KeyIntent } from '../../src/child/keys';
import '../../src/ui/tokens.css';

afterEach(cleanup);

function show(props: Partial<KeypadProps> = {}) {
  const onKey = vi.fn<(intent: KeyIntent) => void>();
  render(
    <main class="screen">
      <Keypad order="phone" hand="right" onKey={onKey} {...props} />
    </main>,
  );
  return onKey;
}

const names = () =>
  screen.getAllByRole('button').map((key) => key.getAttribute('aria-label') ?? key.textContent);

describe('the keypad', () => {
  it('acts when the finger comes down, not when it leaves', () => {
    const onKey = show();
    const seven = screen.getByRole('button', { name: '7' });
    fireEvent.pointerDown(seven, { pointerType: 'touch' });
    expect(onKey).toHaveBeenCalledOnce();
    expect(onKey.mock.lastCall?.[0]).toMatchObject({ key: '7', via: 'touch' });
    fireEvent.pointerUp(seven, { pointerType: 'touch' });
    fireEvent.click(seven, { detail: 1 });
    expect(onKey).toHaveBeenCalledOnce();
  });

  it('takes a second finger that comes down before the first has left', () => {
    const onKey = show();
    fireEvent.pointerDown(screen.getByRole('button', { name: '5' }), {
      pointerType: 'touch',
      isPrimary: true,
    });
    fireEvent.pointerDown(screen.getByRole('button', { name: '6' }), {
      pointerType: 'touch',
      isPrimary: false,
    });
    expect(onKey.mock.calls.map(([{ key }]) => key)).toEqual(['5', '6']);
  });

  it('shows a press by shape at once, and lets go of it', () => {
    show();
    const seven = screen.getByRole('button', { name: '7' });
    const before = getComputedStyle(seven).borderTopWidth;
    fireEvent.pointerDown(seven, { pointerType: 'touch' });
    expect(getComputedStyle(seven).borderTopWidth).not.toBe(before);
    fireEvent.pointerUp(seven, { pointerType: 'touch' });
    expect(getComputedStyle(seven).borderTopWidth).toBe(before);
  });

  it('answers a switch or a screen reader, which click without a finger', () => {
    const onKey = show();
    fireEvent.click(screen.getByRole('button', { name: 'Rub out' }), { detail: 0 });
    expect(onKey.mock.lastCall?.[0].key).toBe('back');
  });

  it('has every key once, in both orders', () => {
    show();
    expect(names()).toEqual(['1', '2', '3', 'Rub out', '4', '5', '6', 'Later', '7', '8', '9', 'Done', '0']);
    cleanup();
    show({ order: 'calculator' });
    expect(names()).toEqual(['7', '8', '9', 'Rub out', '4', '5', '6', 'Later', '1', '2', '3', 'Done', '0']);
  });

  it('puts the other keys on the side of the hand', () => {
    show({ hand: 'left' });
    expect(names().slice(0, 4)).toEqual(['Rub out', '1', '2', '3']);
  });
});
