import type { PromptId } from '../core/fact/prompt';
import type { Picture } from '../core/strategy/picture';
import { StrategyPicture } from '../ui/strategy-picture';
import './way.css';

/** A way to a new fact: a line, a picture, or both. */
export interface Way {
  readonly line: string | null;
  readonly picture: Picture | null;
}

/** The way shown with a whole fact; `null` where the card has none. */
export type WayTo = (prompt: PromptId) => Way | null;

/** What stands beside a new fact while it is shown whole. */
export function WayShown({ way: { line, picture } }: { readonly way: Way }) {
  return (
    <div class="way">
      {picture && <StrategyPicture picture={picture} />}
      {line !== null && <p class="way-line">{line}</p>}
    </div>
  );
}
