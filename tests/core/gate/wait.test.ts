import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type GateData, withTryCounted, withWaitServed } from '../../../src/core/gate/gate-data';
import { longestWaitMs, waitAfterMs, waitAtOpeningMs } from '../../../src/core/gate/wait';

const secret = { salt: '', hash: '', rounds: 1 };
const fresh: GateData = { v: 1, pin: secret, recovery: secret, tries: 0, waitDue: false };

test('two wrong tries cost no wait; then it doubles from two seconds to sixty', () => {
  const waitsS = Array.from({ length: 10 }, (_, tries) => waitAfterMs(tries) / 1000);
  expect(waitsS).toEqual([0, 0, 0, 2, 4, 8, 16, 32, 60, 60]);
});

test('the wait never falls with more tries and never passes sixty seconds', () => {
  fc.assert(
    fc.property(fc.nat({ max: 5000 }), (tries) => {
      expect(waitAfterMs(tries + 1)).toBeGreaterThanOrEqual(waitAfterMs(tries));
      expect(waitAfterMs(tries)).toBeLessThanOrEqual(longestWaitMs);
    }),
  );
});

test('a page opened in mid-wait begins the whole wait again', () => {
  const third = [1, 2, 3].reduce(withTryCounted, fresh);
  expect(waitAtOpeningMs(third)).toBe(2000);
});

test('a wait that was sat out does not come back with a reload, and the next wrong try waits longer', () => {
  const served = withWaitServed([1, 2, 3].reduce(withTryCounted, fresh));
  expect(waitAtOpeningMs(served)).toBe(0);
  expect(waitAtOpeningMs(withTryCounted(served))).toBe(4000);
});
