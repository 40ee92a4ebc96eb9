import { expect, test } from 'vitest';
import { measureClockStep, startClock } from '../../src/state/sitting-clock';
import { fakePorts } from './fake-ports';

test('times are ms since the sitting began, on the page’s own time line', () => {
  const ports = fakePorts();
  const began = ports.monotonic();
  const clock = startClock(ports);
  expect(clock.now()).toBe(0);
  ports.pass(1234.5);
  expect(clock.now()).toBe(1234.5);
  expect(clock.at(began + 250)).toBe(250);
});

test('a sitting taken up again goes on where the gap ended', () => {
  const ports = fakePorts();
  const clock = startClock(ports, 60_000);
  expect(clock.now()).toBe(60_000);
  ports.pass(500);
  expect(clock.now()).toBe(60_500);
});

test('times are rounded to the microsecond, so that sums of them meet', () => {
  const ports = fakePorts();
  const clock = startClock(ports);
  expect(clock.at(ports.monotonic() + 0.1 + 0.2)).toBe(0.3);
});

test('setting the device’s clock moves no time within a sitting', () => {
  const ports = fakePorts();
  const clock = startClock(ports);
  ports.pass(2000);
  ports.setWallClock(0);
  expect(clock.now()).toBe(2000);
});

test.each([
  [999, false],
  [-999, false],
  [1001, true],
  [-1001, true],
  [31_536_000_000, true],
])('clocks %i ms apart: jumped %s', (apartMs, jumped) => {
  const ports = fakePorts();
  const clock = startClock(ports);
  ports.pass(1500);
  ports.setWallClock(ports.now() + apartMs);
  expect(clock.hasJumped()).toBe(jumped);
});

test('a jump is told once, and drift between two looks does not add up to one', () => {
  const ports = fakePorts();
  const clock = startClock(ports);
  ports.setWallClock(ports.now() + 5000);
  expect(clock.hasJumped()).toBe(true);
  expect(clock.hasJumped()).toBe(false);
  for (let look = 0; look < 10; look += 1) {
    ports.pass(600_000);
    ports.setWallClock(ports.now() + 300);
    expect(clock.hasJumped()).toBe(false);
  }
});

test('the clock’s step is the smallest it is seen to make; a clock that stands has none', () => {
  let now = 0;
  const steps = [0, 0.1, 0, 0.3, 0.1];
  expect(
    measureClockStep(() => {
      now += steps.shift() ?? 0;
      return now;
    }),
  ).toBe(0.1);
  expect(measureClockStep(() => 7)).toBe(0);
});
