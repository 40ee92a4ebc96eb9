import { isCopyRound } from '../hand-round/hand-round';
import { activeTimes } from '../marking/active-time';
import type { Sat, Via } from '../record/sat';
import { isDeciding } from '../sitting/turn';
import type { Hands, Summary } from './summary';

const handsKept = 6;
const cardTimesKept = 5;
/** Fewer cards say little of what a card takes. */
const leastCards = 5;

/** The summary with the hands a sitting was keyed with; a copy round sat to its end counts for them. */
export function withHands(summary: Summary, sat: Sat): Summary {
  const via = viaOf(sat);
  if (via === null) return summary;
  const isThese = ({ device, via: other }: Hands) => device === sat.device && other === via;
  const before = summary.hands.find(isThese) ?? { device: sat.device, via, copied: 0, copiedOn: null };
  const isCopied = isCopyRound(sat) && sat.ended === 'finished';
  const these = isCopied ? { ...before, copied: before.copied + 1, copiedOn: sat.day } : before;
  if (these === before && summary.hands.at(-1) === before) return summary;
  return {
    ...summary,
    hands: [...summary.hands.filter((one) => !isThese(one)), these].slice(-handsKept),
  };
}

/** The way most of a sitting's keys came; `null` where there were none. */
function viaOf({ visits }: Sat): Via | null {
  const keys = visits.flatMap((visit) => visit.keys);
  const touched = keys.filter(([, , via]) => via === 'touch').length;
  if (keys.length === 0) return null;
  return touched * 2 >= keys.length ? 'touch' : 'keys';
}

/** The summary with what a card took in a sitting without the clock; without times nothing is known. */
export function withCardTime(summary: Summary, sat: Sat): Summary {
  const cards = sat.visits.filter(isDeciding).length;
  const ms = activeTimes(sat).at(-1) ?? null;
  if (sat.clock || ms === null || cards < leastCards) return summary;
  return { ...summary, cardMs: [...summary.cardMs, ms / cards].slice(-cardTimesKept) };
}
