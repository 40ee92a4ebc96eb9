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
  /** `null` for an answer after the bell, which is neither right nor wrong by it. */
  readonly right: boolean | null;
  /** To the first key, ms over 0; after the bell too, or slow answers would go missing. `null` where unknown. */
  readonly firstKeyMs: number | null;
}
