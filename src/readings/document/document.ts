import type { FactId } from '../../core/fact/fact';
import type { Band } from '../../core/marking/band';
import type { Day, Id } from '../../core/record/stamp';
import type { ClockEffect } from '../clock-effect/clock-effect';
import type { ReadTrial } from '../clock-trial/read-trial';
import type { Lift } from '../errors/lift';
import type { ErrorFlag, ErrorName } from '../errors/read-error';
import type { FactReading } from '../facts/fact-reading';
import type { HandTime } from '../hand-time/hand-time';
import type { Readiness } from '../move-on/readiness';
import type { RateName } from '../over-time/read-rates';
import type { Conditions } from '../rates/conditions';
import type { TrendLine } from '../rates/trend';
import type { Said } from '../sentences/sentence';
import type { SittingReading } from '../sitting-verdict/sitting-reading';
import type { Flustered } from '../sitting-verdict/verdict';

/** Changes whenever a field's meaning does or one goes; a field more keeps it. */
export const documentVersion = 1;

/** Every reading of a household as one JSON document. */
export interface ReadingsDocument {
  readonly format: 'sumstitch-readings';
  readonly version: typeof documentVersion;
  /** Records left out because a later version made them. */
  readonly later: number;
  readonly children: readonly DocumentChild[];
}

export interface DocumentChild {
  readonly child: Id;
  readonly name: string;
  readonly set: Id | null;
  readonly facts: readonly DocumentFact[];
  readonly sittings: readonly DocumentSitting[];
  /** Whether the child is called flustered now, by the looks taken and no others; `null` for no. */
  readonly flustered: Flustered | null;
  readonly clockEffect: ClockEffect & { readonly said: readonly Said[] };
  readonly trial: (ReadTrial & { readonly said: Said }) | null;
  readonly readiness: (Readiness & { readonly said: readonly Said[] }) | null;
  readonly rates: readonly DocumentStretch[];
  readonly hands: readonly DocumentHand[];
  /** How often each look of a wrong number came, set against chance; those that never came are left out. */
  readonly errors: readonly Lift[];
}

export interface DocumentFact extends Omit<FactReading, 'fact'> {
  readonly fact: FactId;
  readonly said: Said;
}

export interface DocumentSitting extends SittingReading {
  readonly causes: readonly DocumentCause[];
  /** The sentences in a row. */
  readonly sentence: string;
  readonly said: readonly Said[];
  /** The band the first part of an untimed sheet would have fallen in: a reading, never a trigger. */
  readonly bandInFirst: Band | null;
}

/** One wrong or skipped answer with its likely cause. */
export interface DocumentCause {
  readonly place: number;
  readonly fact: FactId;
  readonly given: string | null;
  readonly cause: ErrorName;
  readonly flags: readonly ErrorFlag[];
  /** The parent's word: a slip, a miscalculation, or not said. */
  readonly slip: boolean | null;
}

/** Sheets running under the same conditions, and the line through one rate. */
export interface DocumentStretch {
  readonly rate: RateName;
  readonly withClock: boolean;
  readonly conditions: Conditions;
  readonly from: Day;
  readonly to: Day;
  readonly sittings: number;
  /** What changed since the stretch before. */
  readonly changed: readonly (keyof Conditions)[];
  readonly line: TrendLine | null;
  readonly noLine: 'tooFew' | 'ceiling' | null;
}

export interface DocumentHand extends Omit<HandTime, 'byDigits'> {
  /** Copies by how many digits they have. */
  readonly byDigits: Readonly<Record<string, number>>;
}
