import { expect, test } from 'vitest';
import { watchToday } from '../../src/state/today';
import { fakePorts, morningOf } from './fake-ports';

test('at midnight the day turns by itself, within half a minute', () => {
  const ports = fakePorts('2026-02-28');
  const today = watchToday(ports);
  const toMidnightMs = morningOf('2026-03-01') - 10 * 3_600_000 - ports.now();
  ports.pass(toMidnightMs - 1);
  expect(today.day.value).toBe('2026-02-28');
  ports.pass(30_001);
  expect(today.day.value).toBe('2026-03-01');
});

test('whoever looks sees the day at once, forward and back', () => {
  const ports = fakePorts('2026-03-02');
  const today = watchToday(ports);
  ports.setWallClock(morningOf('2031-07-04'));
  expect(today.look()).toBe('2031-07-04');
  ports.setWallClock(morningOf('2026-03-02'));
  expect(today.look()).toBe('2026-03-02');
  expect(today.day.value).toBe('2026-03-02');
});

test('one timer watches, however long the page stays open', () => {
  const ports = fakePorts();
  watchToday(ports);
  ports.pass(7 * 86_400_000);
  expect(ports.timers()).toBe(1);
});
