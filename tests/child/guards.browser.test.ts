import { afterEach, describe, expect, it, vi } from 'vitest';
import { fillScreen, guardPage, keepAwake, watchHands } from '../../src/child/guards';

const stops: (() => void)[] = [];
afterEach(() => {
  for (const stop of stops.splice(0)) stop();
  vi.restoreAllMocks();
});

const isRefused = (event: Event) => !document.body.dispatchEvent(event);
const happen = (name: string) => new Event(name, { bubbles: true, cancelable: true });

describe('guarding the page', () => {
  it.each(['contextmenu', 'dragstart', 'selectstart', 'gesturestart', 'dblclick'])(
    'refuses %s until it ends',
    (name) => {
      const stop = guardPage(document);
      expect(isRefused(happen(name))).toBe(true);
      stop();
      expect(isRefused(happen(name))).toBe(false);
    },
  );

  it('refuses the pinch of a touch pad, but not scrolling', () => {
    stops.push(guardPage(document));
    const wheel = (ctrlKey: boolean) => new WheelEvent('wheel', { ctrlKey, bubbles: true, cancelable: true });
    expect(isRefused(wheel(true))).toBe(true);
    expect(isRefused(wheel(false))).toBe(false);
  });
});

describe('watching the hands', () => {
  it('marks the page while it is worked by keys, and no longer once a finger comes', () => {
    const stop = watchHands(document);
    const isMarked = () => document.documentElement.hasAttribute('data-by-keys');
    document.body.dispatchEvent(happen('keydown'));
    expect(isMarked()).toBe(true);
    document.body.dispatchEvent(happen('pointerdown'));
    expect(isMarked()).toBe(false);
    stop();
    document.body.dispatchEvent(happen('keydown'));
    expect(isMarked()).toBe(false);
  });
});

describe('filling the screen', () => {
  it('asks at the first gesture, once', () => {
    const ask = vi.spyOn(document.documentElement, 'requestFullscreen').mockResolvedValue();
    stops.push(fillScreen(document));
    expect(ask).not.toHaveBeenCalled();
    document.body.dispatchEvent(happen('pointerup'));
    document.body.dispatchEvent(happen('keydown'));
    expect(ask).toHaveBeenCalledOnce();
  });

  it('asks for nothing at a press that leads to the grown-ups', () => {
    const ask = vi.spyOn(document.documentElement, 'requestFullscreen').mockResolvedValue();
    stops.push(fillScreen(document));
    const knot = document.createElement('button');
    knot.dataset['leaves'] = '';
    document.body.append(knot);
    knot.dispatchEvent(happen('pointerup'));
    expect(ask).not.toHaveBeenCalled();
    document.body.dispatchEvent(happen('pointerup'));
    expect(ask).toHaveBeenCalledOnce();
    knot.remove();
  });

  it('goes on without when it is refused', async () => {
    vi.spyOn(document.documentElement, 'requestFullscreen').mockRejectedValue(new TypeError('not granted'));
    const unhandled = vi.fn();
    addEventListener('unhandledrejection', unhandled);
    stops.push(fillScreen(document));
    document.body.dispatchEvent(happen('pointerup'));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(unhandled).not.toHaveBeenCalled();
    removeEventListener('unhandledrejection', unhandled);
  });
});

describe('keeping awake', () => {
  const lock = () => ({ release: vi.fn(async () => undefined) });

  it('asks again when the page is seen again, and lets go at the end', async () => {
    const [first, second] = [lock(), lock()];
    const ask = vi
      .spyOn(navigator.wakeLock, 'request')
      .mockResolvedValueOnce(first as unknown as WakeLockSentinel)
      .mockResolvedValueOnce(second as unknown as WakeLockSentinel);
    const stop = keepAwake(document);
    document.dispatchEvent(happen('visibilitychange'));
    await vi.waitFor(() => expect(ask).toHaveBeenCalledTimes(2));
    await Promise.resolve();
    stop();
    expect(second.release).toHaveBeenCalledOnce();
  });

  it('lets go of a lock that comes too late', async () => {
    const late = lock();
    vi.spyOn(navigator.wakeLock, 'request').mockResolvedValue(late as unknown as WakeLockSentinel);
    keepAwake(document)();
    await vi.waitFor(() => expect(late.release).toHaveBeenCalledOnce());
  });
});
