import type { FactId } from '../../core/fact/fact';

/** What may lie behind a count; the first seven may stand side by side where they don't contradict each other. */
export type VerdictName =
  | 'notKnown'
  | 'new'
  | 'rushed'
  | 'flustered'
  | 'slowHands'
  | 'checking'
  | 'fine'
  | 'cannotTell';

/** A verdict with what it rests on. Times in seconds, shares as counts. */
export type Verdict =
  | {
      readonly name: 'notKnown';
      /** Missed, and wrong as often without the clock on days before. */
      readonly facts: readonly FactId[];
      readonly rightBefore: number;
      readonly ofBefore: number;
    }
  | { readonly name: 'new'; readonly facts: readonly FactId[]; readonly ofTroubled: number }
  | {
      readonly name: 'rushed';
      readonly by: 'wrongQuicker' | 'quickerThanUsual' | 'rapid';
      readonly wrong: number;
      readonly wrongS: number;
      readonly rightS: number;
      readonly p: number | null;
    }
  | {
      readonly name: 'flustered';
      readonly by: 'slower' | 'lessRight' | 'both';
      readonly ratio: number | null;
      readonly shareWith: number;
      readonly shareWithout: number;
      readonly daysWith: number;
      readonly facts: number;
    }
  | {
      readonly name: 'slowHands';
      readonly mostAnswers: number;
      readonly needed: number;
      readonly restoringS: number | null;
    }
  | { readonly name: 'checking'; readonly right: number; readonly of: number; readonly thinkS: number }
  | { readonly name: 'fine' }
  | { readonly name: 'cannotTell'; readonly why: 'interrupted' | 'noTimes' | 'tooFew' | 'nothingStandsOut' };

/** Pairs that are never given of one sitting; `fine` and `cannotTell` stand alone. */
export const contradictions: readonly (readonly [VerdictName, VerdictName])[] = [
  ['rushed', 'checking'],
  ['rushed', 'flustered'],
  ['checking', 'notKnown'],
  ['checking', 'new'],
  ['checking', 'flustered'],
];

/** Whether two verdicts may stand side by side. */
export function areTogether(one: VerdictName, other: VerdictName): boolean {
  if (one === other) return true;
  const alone: readonly VerdictName[] = ['fine', 'cannotTell'];
  if (alone.includes(one) || alone.includes(other)) return false;
  return !contradictions.some((pair) => pair.includes(one) && pair.includes(other));
}
