import type { KeyPress, Sat, SittingPlan, Visit } from '../../../src/core/record/sat';
import type { ScriptedCard } from './script';

/** When a sitting was and under which id; the rest of its stamp is always the same. */
export interface When {
  readonly day: string;
  readonly nth: number;
}

export const madeStart = {
  offsetMin: 0,
  zone: 'UTC',
  startedAt: 1_800_000_000_000,
  clockStepMs: 0.005,
  isolated: true,
} as const;

export const madeStamp = ({ day, nth }: When) =>
  ({ id: `sat-${day}-${nth}`, v: 1, seq: nth, device: 'tablet', at: madeStart.startedAt }) as const;

const micro = (ms: number) => Math.round(ms * 1000) / 1000;
const firstOnsetMs = 40;

/** Sits a script without the machine, for thousands of sittings; a test holds it equal to the machine. */
export function sitFast(plan: SittingPlan, script: readonly ScriptedCard[], when: When): Sat {
  const visits: Visit[] = [];
  let atMs = firstOnsetMs;
  let bellAtMs: number | null = null;
  for (const [place, { turnMs, keys }] of script.entries()) {
    const onsetMs: number = micro(atMs + turnMs);
    bellAtMs ??= plan.clock ? micro(onsetMs + plan.clock.allowanceMs) : null;
    atMs = onsetMs;
    const pressed = keys.map(({ key, afterMs }): KeyPress => {
      atMs = micro(atMs + afterMs);
      return [key, atMs, 'touch'];
    });
    const isLate = bellAtMs !== null && atMs > bellAtMs;
    visits.push({
      place,
      onsetMs,
      onsetBy: 'element',
      keys: pressed,
      end: 'taken',
      endMs: atMs,
      given: keys.flatMap(({ key }) => (key === 'done' ? [] : [key])).join(''),
      took: plan.takesItself ? 'itself' : 'done',
      ...(isLate && { afterBell: true }),
    });
    if (isLate) break;
  }
  const ended = visits.at(-1)?.afterBell ? 'bell' : 'finished';
  return {
    ...plan,
    ...madeStart,
    ...madeStamp(when),
    kind: 'sat',
    day: when.day,
    visits,
    away: [],
    ended,
    endedMs: atMs,
  };
}
