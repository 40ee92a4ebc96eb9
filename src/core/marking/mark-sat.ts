import type { Sat } from '../record/sat';
import type { ChildSettings } from '../record/settings';
import { activeTimes } from './active-time';
import { bandOf } from './band';
import { countDigits } from './count-digits';
import { flagsOf } from './flags';
import { markPlaces } from './mark-place';
import type { Marked, MarkedPlace, NoBand, Outcome } from './marked';
import { median } from './median';
import { perMinute } from './rate';
import type { SatRulings } from './sat-rulings';

/** A sitting marked under the rulings in force; `limits` are the child's, of 25. */
export function markSat(sat: Sat, rulings: SatRulings, limits: ChildSettings['limits']): Marked {
  const active = activeTimes(sat);
  const places = markPlaces(sat, rulings, active);
  const counts = countsOf(places);
  const rightByBell = places.reduce((sum, place) => sum + Number(isRightByBell(place)), 0);
  const interrupted = isInterrupted(sat);
  const noBand = whyNoBand(sat, rulings, interrupted);
  const counted = sat.clock ? places.filter(({ byBell }) => byBell) : places;
  const ms = countedMs(sat, active);
  return {
    places,
    right: counts.right,
    wrong: counts.wrong,
    skipped: counts.skipped,
    notReached: counts.notReached,
    unfinished: counts.unfinished,
    reached: places.length - counts.notReached,
    rightByBell,
    band: noBand ? null : bandOf(rightByBell, places.length, limits),
    noBand,
    interrupted,
    // These two are looked at for one sitting at a time, and dear over ten years of them.
    get flags() {
      return flagsOf(sat);
    },
    get medianMs() {
      return medianOf(places);
    },
    factsPerMin:
      ms === null ? null : perMinute(counted.filter(({ outcome }) => outcome === 'right').length, ms),
    digitsPerMin: ms === null ? null : perMinute(digitsIn(counted), ms),
    limits,
  };
}

function countsOf(places: readonly MarkedPlace[]): Readonly<Record<Outcome, number>> {
  const counts = { right: 0, wrong: 0, skipped: 0, notReached: 0, unfinished: 0 };
  for (const { outcome } of places) counts[outcome] += 1;
  return counts;
}

function isRightByBell({ outcome, byBell }: MarkedPlace): boolean {
  return byBell && outcome === 'right';
}

function isInterrupted({ away, ended }: Sat): boolean {
  return away.length > 0 || ended === 'stopped' || ended === 'torn';
}

/** "Band anyway" speaks of the interruption only. */
function whyNoBand(sat: Sat, rulings: SatRulings, interrupted: boolean): NoBand | null {
  if (rulings.voided) return 'voided';
  if (rulings.notOwnWork) return 'notOwnWork';
  if (!sat.clock) return 'untimed';
  if (sat.second) return 'second';
  return interrupted && !rulings.bandAnyway ? 'interrupted' : null;
}

/** Active time the rates are taken over: to the last card's end, in a timed sitting at most the allowance. */
function countedMs({ clock, ended }: Sat, active: readonly (number | null)[]): number | null {
  const ms = active.at(-1) ?? null;
  if (!clock || ms === null) return ms;
  return ended === 'bell' ? clock.allowanceMs : Math.min(ms, clock.allowanceMs);
}

function digitsIn(places: readonly MarkedPlace[]): number {
  return places.reduce((sum, { answer, given, accepted }) => {
    if (given === null) return sum;
    return sum + countDigits(answer, accepted ? String(answer) : given).correct;
  }, 0);
}

/** Cards opened again are left out: what they took was the mending of a slip. */
function medianOf(places: readonly MarkedPlace[]): number | null {
  const times = places.flatMap(({ tookMs, firstKeyMs }) =>
    tookMs === null || firstKeyMs === null ? [] : [tookMs],
  );
  return median(times);
}
