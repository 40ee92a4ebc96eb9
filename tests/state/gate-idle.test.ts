import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { hiddenLimitMs, idleLimitMs, watchIdle } from '../../src/state/gate-idle';

class Page extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
  turn(to: DocumentVisibilityState) {
    this.visibilityState = to;
    this.dispatchEvent(new Event('visibilitychange'));
  }
}

let page: Page;
let lock: ReturnType<typeof vi.fn<() => void>>;
let stop: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  page = new Page();
  lock = vi.fn();
  stop = watchIdle(lock, page as unknown as Document);
});

afterEach(() => {
  stop();
  vi.useRealTimers();
});

test('three minutes without input lock', () => {
  expect(idleLimitMs).toBe(180_000);
  vi.advanceTimersByTime(idleLimitMs - 1);
  expect(lock).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(lock).toHaveBeenCalledOnce();
});

test('any key or touch begins the three minutes again', () => {
  for (const input of ['keydown', 'pointerdown', 'wheel']) {
    vi.advanceTimersByTime(idleLimitMs - 1);
    page.dispatchEvent(new Event(input));
  }
  vi.advanceTimersByTime(idleLimitMs - 1);
  expect(lock).not.toHaveBeenCalled();
});

test('a short look away does not lock; half a minute out of sight does', () => {
  page.turn('hidden');
  vi.advanceTimersByTime(hiddenLimitMs - 1);
  page.turn('visible');
  vi.advanceTimersByTime(hiddenLimitMs);
  expect(lock).not.toHaveBeenCalled();
  page.turn('hidden');
  vi.advanceTimersByTime(hiddenLimitMs);
  expect(lock).toHaveBeenCalledOnce();
});

test('a device that slept with its timers locks on return', () => {
  page.turn('hidden');
  vi.setSystemTime(Date.now() + hiddenLimitMs);
  page.turn('visible');
  expect(lock).toHaveBeenCalledOnce();
});

test('a first touch long after the last one, the timers asleep, locks instead of counting as input', () => {
  vi.setSystemTime(Date.now() + idleLimitMs);
  page.dispatchEvent(new Event('pointerdown'));
  expect(lock).toHaveBeenCalledOnce();
});

test('a wall clock set back keeps nothing open longer', () => {
  vi.setSystemTime(Date.now() - 86_400_000);
  vi.advanceTimersByTime(idleLimitMs);
  expect(lock).toHaveBeenCalledOnce();
});

test('a stopped watch locks no more', () => {
  stop();
  vi.advanceTimersByTime(idleLimitMs * 2);
  page.turn('hidden');
  vi.advanceTimersByTime(hiddenLimitMs * 2);
  expect(lock).not.toHaveBeenCalled();
});
