import type { FactId } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';

/**
 * A fact met on a sheet: one that was on screen, whatever the answer. Extra rows and places not reached are no
 * meetings (trade rule: rows hold facts missed or not reached, so they can only look better).
 */
export interface Meeting {
  readonly fact: FactId;
  readonly day: Day;
  readonly withClock: boolean;
  /** Device, way of entry and source of the onset in one word: only meetings alike in it are set side by side. */
  readonly where: string;
  /** Right, and by the bell if there was one. */
  readonly right: boolean;
  /** To the first key, ms over 0; where the sitting ended before one, the time till then. `null` if not kept. */
  readonly firstKeyMs: number | null;
}
