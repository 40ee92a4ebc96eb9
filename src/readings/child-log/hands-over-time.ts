import type { Sat, Via } from '../../core/record/sat';
import type { Day, Id } from '../../core/record/stamp';
import { type Copy, copiesDropped, copiesOf } from '../hand-time/copies';
import { copiesPooled, type HandTime, handTimesOf } from '../hand-time/hand-time';

/** How fast these hands were on a day: by the rounds up to then, else by the first that followed. */
export type HandsThen = (device: Id, via: Via, day: Day) => HandTime | null;

/** These hands after the rounds of a day. */
interface Snapshot {
  readonly day: Day;
  readonly hand: HandTime;
}

interface Round {
  readonly sat: Sat;
  readonly copies: readonly Copy[];
}

/** Follows the hands through a child's sittings, which come oldest first: children's hands grow faster. */
export function handsOverTime(sats: readonly Sat[]): HandsThen {
  const rounds = sats.flatMap((sat) => (sat.purpose === 'practice' ? [{ sat, copies: copiesOf(sat) }] : []));
  const known = new Map<string, Snapshot[]>();
  rounds.forEach(({ sat: { day } }, index) => {
    for (const hand of handTimesOf(newest(rounds.slice(0, index + 1)).flatMap(({ copies }) => copies))) {
      const key = `${hand.device} ${hand.via}`;
      const own = known.get(key);
      if (own) own.push({ day, hand });
      else known.set(key, [{ day, hand }]);
    }
  });
  return (device, via, day) => {
    const own = known.get(`${device} ${via}`) ?? [];
    return (own[daysUpTo(own, day) - 1] ?? own[0])?.hand ?? null;
  };
}

/** How many of the snapshots, oldest first, are of that day or before. */
function daysUpTo(snapshots: readonly Snapshot[], day: Day): number {
  let [low, high] = [0, snapshots.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((snapshots[middle]?.day ?? '') <= day) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The newest rounds that hold as many copies as are pooled. */
function newest(rounds: readonly Round[]): readonly Round[] {
  let copies = 0;
  const from = rounds.findLastIndex(({ sat: { visits } }) => {
    copies += Math.max(0, visits.length - copiesDropped);
    return copies >= copiesPooled;
  });
  return rounds.slice(Math.max(0, from));
}
