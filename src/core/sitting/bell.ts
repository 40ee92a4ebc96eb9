import type { Away, SittingPlan, Visit } from '../record/sat';

/** Times are exact to the microsecond: a sum of two of them must equal the same moment read off a clock. */
export function toMicro(ms: number): number {
  return Math.round(ms * 1000) / 1000;
}

/** Where the bell stands: see the fields of the same names in `SittingState`. */
export interface Bell {
  readonly firstOnsetMs: number | null;
  readonly bellAtMs: number | null;
  readonly leftMs: number | null;
}

/**
 * The bell of a sitting from its closed visits: first onset + allowance, put off by every void visit and span away
 * (the allowance is active time). Where times were not kept it is unknown: `null`.
 */
export function reckonBell(plan: SittingPlan, visits: readonly Visit[], away: readonly Away[]): Bell {
  const breaks = new Set(away.map((span) => span.afterVisits));
  let bellAtMs: number | null = null;
  let leftMs = plan.clock ? plan.clock.allowanceMs : null;
  for (const [index, visit] of visits.entries()) {
    if (leftMs !== null) {
      bellAtMs = visit.onsetMs === null ? null : toMicro(visit.onsetMs + leftMs);
      leftMs = null;
    }
    leftMs = leftAfter(bellAtMs, visit, visit.end === 'left' || breaks.has(index + 1));
  }
  return { firstOnsetMs: visits[0]?.onsetMs ?? null, bellAtMs, leftMs };
}

/** Allowance left when a sitting breaks off after `last`: a void visit's time is given back. */
export function leftAfter(
  bellAtMs: number | null,
  last: Visit | undefined,
  isBroken: boolean,
): number | null {
  const sinceMs = last?.end === 'left' ? last.onsetMs : last?.endMs;
  if (!isBroken || bellAtMs === null || sinceMs === null || sinceMs === undefined) return null;
  return toMicro(bellAtMs - sinceMs);
}
