import type { Stretch } from '../../readings/rates/trend';
import { sentenceOfTrend } from '../../readings/sentences/of-time';
import { say } from '../../readings/sentences/say';
import type { TrendOf } from '../../readings/sentences/sentence';
import { Said } from '../parts/said';

export interface TrendSaidProps {
  readonly of: TrendOf;
  readonly withClock: boolean;
  readonly stretches: readonly Stretch[];
  readonly who: string;
}

/** The trend of the newest stretch as a sentence; nothing where nothing was sat. */
export function TrendSaid({ of, withClock, stretches, who }: TrendSaidProps) {
  const sentence = sentenceOfTrend(of, withClock, stretches);
  return sentence && <Said {...say(sentence, who)} />;
}
