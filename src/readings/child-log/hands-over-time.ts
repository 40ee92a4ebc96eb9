import type { Sat, Via } from '../../core/record/sat';
import type { Day, Id } from '../../core/record/stamp';
import { copiesDropped } from '../hand-time/copies';
import { copiesPooled, type HandTime, handTimes } from '../hand-time/hand-time';

/** How fast these hands were on a day: by the rounds up to then, else by the first that followed. */
export type HandsThen = (device: Id, via: Via, day: Day) => HandTime | null;

/** Follows the hands through a child's sittings, which come oldest first: children's hands grow faster. */
export function handsOverTime(sats: readonly Sat[]): HandsThen {
  const rounds = sats.filter(({ purpose }) => purpose === 'practice');
  const snapshots = rounds.map((round, index) => ({
    day: round.day,
    hands: handTimes(newest(rounds.slice(0, index + 1))),
  }));
  const known = new Map<string, HandTime | null>();
  return (device, via, day) => {
    const isHere = (hand: HandTime) => hand.device === device && hand.via === via;
    const at = snapshots.findLastIndex((snapshot) => snapshot.day <= day && snapshot.hands.some(isHere));
    const key = `${at} ${device} ${via}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const from = at < 0 ? snapshots : snapshots.slice(at, at + 1);
    const hand = from.flatMap(({ hands }) => hands).find(isHere) ?? null;
    known.set(key, hand);
    return hand;
  };
}

/** The newest rounds that hold as many copies as are pooled. */
function newest(rounds: readonly Sat[]): readonly Sat[] {
  let copies = 0;
  const from = rounds.findLastIndex(({ visits }) => {
    copies += Math.max(0, visits.length - copiesDropped);
    return copies >= copiesPooled;
  });
  return rounds.slice(Math.max(0, from));
}
