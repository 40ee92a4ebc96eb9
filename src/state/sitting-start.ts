import { formatISO, startOfDay } from 'date-fns';
import type { SittingPlan, SittingStart } from '../core/record/sat';
import type { Ports } from './ports';
import { measureClockStep } from './sitting-clock';

/** Where and when a sitting begins; its day stays, wherever the device travels. Without times only the day is kept. */
export function startSitting(plan: SittingPlan, ports: Ports): SittingStart {
  const now = ports.now();
  const startedAt = plan.keepTimes ? now : startOfDay(now).getTime();
  return {
    day: formatISO(now, { representation: 'date' }),
    ...ports.zone(now),
    startedAt,
    clockStepMs: measureClockStep(ports.monotonic),
    isolated: ports.isolated,
  };
}
