/** What came of a run of torture. */
export interface Tally {
  readonly seed: number;
  readonly rounds: number;
  readonly faults: ReadonlyMap<string, number>;
  /** What was being written when the browser was killed. */
  readonly inFlight: ReadonlyMap<string, number>;
  /** The screens on which a fault fell. */
  readonly screens: ReadonlyMap<string, number>;
  /** Kills that tore a record of the browser's own log. */
  readonly tornLogs: number;
  readonly acknowledged: number;
  readonly lost: readonly string[];
  readonly torn: readonly string[];
  readonly notTakenUp: readonly string[];
  readonly refused: readonly string[];
  readonly unhandled: readonly string[];
}

/** A tally that is still being counted. */
export type Counts = {
  -readonly [K in keyof Tally]: Tally[K] extends ReadonlyMap<infer N, infer V>
    ? Map<N, V>
    : Tally[K] extends readonly string[]
      ? string[]
      : Tally[K];
};

/** The tally as a table in Markdown. */
export function tableOf(tally: Tally): string {
  const rows: readonly (readonly [string, string | number])[] = [
    ['seed', tally.seed],
    ['rounds', tally.rounds],
    ...[...tally.faults].map(([name, count]) => [`fault: ${name}`, count] as const),
    ...[...tally.inFlight].map(([name, count]) => [`killed while writing: ${name}`, count] as const),
    ['kills that tore the browser’s own log', tally.tornLogs],
    ['screens on which a fault fell', tally.screens.size],
    ['writes acknowledged', tally.acknowledged],
    ['of these lost', tally.lost.length],
    ['torn', tally.torn.length],
    ['steps that could not be taken up again', tally.notTakenUp.length],
    ['refused with a sentence', tally.refused.length],
    ['unhandled', tally.unhandled.length],
  ];
  return ['| | |', '|---|---|', ...rows.map(([name, value]) => `| ${name} | ${value} |`)].join('\n');
}

export function addTo(counts: Map<string, number>, name: string): void {
  counts.set(name, (counts.get(name) ?? 0) + 1);
}
