import type { BrowserContext } from './browser';

const dayMs = 86_400_000;

/** Tuesday, so that the days beside it are school days too. */
const tuesday = 2;

/**
 * Sets the device's date to the coming Tuesday, or so many days after or before it; the monotonic clock knows nothing
 * of it. A journey thus runs alike on every day of the week, weekends with their free days among them.
 */
export function setDay(context: BrowserContext, daysOn = 0): Promise<unknown> {
  const ahead = (tuesday - new Date().getDay() + 7) % 7;
  return context.addInitScript(
    (offsetMs) => {
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
    },
    (ahead + daysOn) * dayMs,
  );
}
