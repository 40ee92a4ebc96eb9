import fc from 'fast-check';
import { expect } from 'vitest';
import { anyLife, type Model, sitToTheEnd } from './life-commands';
import { Device } from './random-life';

/** Lives so many random lives through log, plan and sitting, each beside a simple model of it. */
export function liveLives(runs: number, seed?: number): void {
  fc.assert(
    fc.property(anyLife(40), (commands) => {
      const real = new Device();
      const model: Model = { acknowledged: null, sheets: [] };
      fc.modelRun(() => ({ model, real }), commands);
      sitToTheEnd(real);
      expect(real.plan().isDone).toBe(true);
    }),
    { numRuns: runs, ...(seed === undefined ? {} : { seed }) },
  );
}
