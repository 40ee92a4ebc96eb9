import { describe, expect, it, vi } from 'vitest';
import { type KeyIntent, listenToKeyboard, readKeyboard, readPress } from '../../src/child/keys';

const press = (key: string, more: KeyboardEventInit = {}) =>
  readKeyboard(new KeyboardEvent('keydown', { key, bubbles: true, ...more }))?.key ?? null;

describe('the keyboard', () => {
  it('gives each digit, from the row and from the number block', () => {
    for (const digit of '0123456789') {
      expect(press(digit, { code: `Digit${digit}` })).toBe(digit);
      expect(press(digit, { code: `Numpad${digit}` })).toBe(digit);
    }
  });

  it('gives a digit by its place where the layout wants Shift or the number block is unlocked', () => {
    expect(press('è', { code: 'Digit7' })).toBe('7');
    expect(press('End', { code: 'Numpad1' })).toBe('1');
  });

  it('gives a digit where only its sign is known', () => {
    expect(press('4', { code: '' })).toBe('4');
  });

  it('rubs out, is done and skips', () => {
    expect(press('Backspace')).toBe('back');
    expect(press('Enter')).toBe('done');
    expect(press('Enter', { code: 'NumpadEnter' })).toBe('done');
    expect(press('ArrowRight')).toBe('skip');
  });

  it('knows no letter, space or sign', () => {
    for (const key of ['a', 's', 'S', ' ', '+', '-', '*', '/', '.', 'Tab', 'Escape', 'F7', 'ArrowLeft']) {
      expect(press(key)).toBeNull();
    }
  });

  it('leaves a held key and every shortcut alone', () => {
    expect(press('5', { repeat: true })).toBeNull();
    expect(press('5', { ctrlKey: true })).toBeNull();
    expect(press('5', { metaKey: true })).toBeNull();
    expect(press('5', { altKey: true })).toBeNull();
  });

  it('leaves Enter to a button that has the focus, but not to a key of the keypad', () => {
    const heard: KeyIntent[] = [];
    const stop = listenToKeyboard((intent) => heard.push(intent));
    const button = document.createElement('button');
    document.body.append(button);
    const enter = () => new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true });
    button.dispatchEvent(enter());
    expect(heard).toEqual([]);
    button.tabIndex = -1;
    button.dispatchEvent(enter());
    expect(heard.map(({ key }) => key)).toEqual(['done']);
    stop();
    button.remove();
  });

  it('takes the focus off a button that Tab has reached, so that Enter after a digit is the card’s', () => {
    const heard: KeyIntent[] = [];
    const stop = listenToKeyboard((intent) => heard.push(intent));
    const button = document.createElement('button');
    document.body.append(button);
    button.focus();
    const press = (key: string) =>
      document.activeElement?.dispatchEvent(
        new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
      );
    press('6');
    press('Enter');
    expect(heard.map(({ key }) => key)).toEqual(['6', 'done']);
    stop();
    button.remove();
  });

  it('takes the moment from the event, not from when it is heard', async () => {
    const heard = vi.fn<(intent: KeyIntent) => void>();
    const stop = listenToKeyboard(heard);
    const event = new KeyboardEvent('keydown', { key: '8', bubbles: true });
    await new Promise((resolve) => setTimeout(resolve, 30));
    document.dispatchEvent(event);
    expect(heard).toHaveBeenCalledExactlyOnceWith({ key: '8', atMs: event.timeStamp, via: 'keys' });
    stop();
  });

  it('is quiet once stopped', () => {
    const heard = vi.fn();
    listenToKeyboard(heard)();
    document.dispatchEvent(new KeyboardEvent('keydown', { key: '8', bubbles: true }));
    expect(heard).not.toHaveBeenCalled();
  });
});

describe('a press', () => {
  it('counts from any finger, from a pen and from the main button of a mouse', () => {
    const by = (init: PointerEventInit) => readPress(new PointerEvent('pointerdown', init), '3')?.key ?? null;
    expect(by({ pointerType: 'touch', isPrimary: true })).toBe('3');
    expect(by({ pointerType: 'touch', isPrimary: false })).toBe('3');
    expect(by({ pointerType: 'pen' })).toBe('3');
    expect(by({ pointerType: 'mouse', button: 0 })).toBe('3');
    expect(by({ pointerType: 'mouse', button: 2 })).toBeNull();
  });
});
