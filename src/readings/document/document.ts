import type { FactId } from '../../core/fact/fact';
import type { Id } from '../../core/record/stamp';
import type { ClockEffect } from '../clock-effect/clock-effect';
import type { TrialReading } from '../clock-trial/trial-result';
import type { ErrorName } from '../errors/read-error';
import type { FactReading } from '../facts/fact-reading';
import type { Readiness } from '../move-on/readiness';
import type { Conditions } from '../rates/conditions';
import type { TrendLine } from '../rates/trend';
import type { SittingReading } from '../sitting-verdict/sitting-reading';

/** Changes whenever a field's meaning does or one goes; a field more keeps it. */
export const documentVersion = 1;

/** One wrong answer with its cause. */
export interface DocumentCause {
  readonly place: number;
  readonly fact: FactId;
  readonly given: string | null;
  readonly cause: ErrorName;
  readonly flags: readonly string[];
  readonly slip: boolean | null;
}

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
  readonly facts: readonly (Omit<FactReading, 'fact'> & {
    readonly fact: FactId;
    readonly sentence: string;
  })[];
  readonly sittings: readonly (SittingReading & {
    readonly causes: readonly DocumentCause[];
    readonly sentence: string;
  })[];
  readonly clockEffect: ClockEffect & { readonly sentences: readonly string[] };
  readonly trial: TrialReading | null;
  readonly readiness: (Readiness & { readonly sentences: readonly string[] }) | null;
  readonly rates: readonly DocumentStretch[];
}

/** Sittings running under the same conditions, with the line through their rates. */
export interface DocumentStretch {
  readonly conditions: Conditions;
  readonly from: string;
  readonly to: string;
  readonly sittings: number;
  readonly changed: readonly (keyof Conditions)[];
  readonly factsPerMin: DocumentLine;
  readonly digitsPerMin: DocumentLine;
}

export interface DocumentLine {
  readonly line: TrendLine | null;
  readonly noLine: 'tooFew' | 'ceiling' | null;
}
