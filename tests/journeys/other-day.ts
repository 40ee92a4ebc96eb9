import type { BrowserContext } from './browser';

/** Sets the device's date so many days on, or back; the monotonic clock knows nothing of it. For `before`. */
export function daysOn(days: number): (context: BrowserContext) => Promise<unknown> {
  return (context) =>
    context.addInitScript((offsetMs) => {
      const Real = Date;
      class Moved extends Real {
        constructor(...given: readonly unknown[]) {
          if (given.length === 0) super(Real.now() + offsetMs);
          else super(...(given as [number]));
        }
        static override now(): number {
          return Real.now() + offsetMs;
        }
      }
      globalThis.Date = Moved as DateConstructor;
    }, days * 86_400_000);
}
