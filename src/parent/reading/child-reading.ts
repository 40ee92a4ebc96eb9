import type { FactId } from '../../core/fact/fact';
import { type History, noHistory } from '../../core/household/history';
import type { Child, Household } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';
import { type ChildLog, stepsOfChildLog } from '../../readings/child-log/child-log';
import type { ClockEffect } from '../../readings/clock-effect/clock-effect';
import { type ReadTrial, readTrial } from '../../readings/clock-trial/read-trial';
import type { FactReading } from '../../readings/facts/fact-reading';
import { readFacts } from '../../readings/facts/read-facts';
import { readReadiness } from '../../readings/move-on/read-readiness';
import type { Readiness } from '../../readings/move-on/readiness';
import { readClockEffect } from '../../readings/over-time/read-clock-effect';
import { type RateOverTime, readRates } from '../../readings/over-time/read-rates';
import { readSitting } from '../../readings/sitting-verdict/read-sittings';
import type { SittingReading } from '../../readings/sitting-verdict/sitting-reading';
import { findSet } from '../children/set-list';
import type { Steps } from './steps';

/** The readings of one child, each made when it is first asked for. */
export interface ChildReading {
  readonly child: Child;
  readonly log: ChildLog;
  readonly facts: ReadonlyMap<FactId, FactReading>;
  readonly readiness: Readiness | null;
  readonly rates: readonly RateOverTime[];
  readonly clockEffect: ClockEffect;
  readonly trial: ReadTrial | null;
  sitting(id: Id): SittingReading | null;
  /** Makes the log bit by bit, then the readings named, each in a step of its own. */
  prepare(...parts: readonly Part[]): Steps<void>;
}

type Part = 'facts' | 'readiness' | 'rates' | 'clockEffect' | 'trial';

// A record makes a new history, so nothing here can go stale.
const known = new WeakMap<History, Map<Id, ChildReading>>();

/** A child's readings; the same for the same history, so that pages share them. */
export function childReading(household: Household, history: History, child: Child): ChildReading {
  const children = known.get(history) ?? new Map<Id, ChildReading>();
  known.set(history, children);
  const before = children.get(child.id);
  if (before) return before;
  const made = makeReading(household, history, child);
  children.set(child.id, made);
  return made;
}

function makeReading(household: Household, history: History, child: Child): ChildReading {
  const own = history.children.get(child.id) ?? noHistory;
  const once = lazily();
  const opening = stepsOfChildLog(child, own, (set) => findSet(household, set)?.facts ?? null);
  let opened: ChildLog | null = null;
  // Several parts of a page may open the same log in turns.
  const openFurther = (): ChildLog | null => {
    if (opened) return opened;
    const step = opening.next();
    if (step.done) opened = step.value;
    return opened;
  };
  const log = (): ChildLog => {
    for (;;) {
      const whole = openFurther();
      if (whole) return whole;
    }
  };
  const facts = () => once('facts', () => readFacts(log()));
  const reading: ChildReading = {
    child,
    get log() {
      return log();
    },
    get facts() {
      return facts();
    },
    get readiness() {
      return once('readiness', () => readReadiness(log(), facts()));
    },
    get rates() {
      return once('rates', () => readRates(log()));
    },
    get clockEffect() {
      return once('clockEffect', () => readClockEffect(log()));
    },
    get trial() {
      return once('trial', () => readTrial(log()));
    },
    sitting: (id) => once(`sitting ${id}`, () => readSitting(log(), id)),
    *prepare(...parts) {
      while (!openFurther()) yield;
      for (const part of parts) {
        yield;
        void reading[part];
      }
    },
  };
  return reading;
}

function lazily() {
  const values = new Map<string, unknown>();
  return <T>(name: string, make: () => T): T => {
    if (!values.has(name)) values.set(name, make());
    return values.get(name) as T;
  };
}
