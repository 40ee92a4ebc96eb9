import { writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { join } from 'node:path';

/** How many rounds each figure is taken over, and how many cards a round holds. */
export const rounds = Number(process.env['BENCH_ROUNDS'] ?? 3);
export const cardsARound = Number(process.env['BENCH_CARDS'] ?? 60);

type Row = Readonly<Record<string, string | number | boolean>>;

/** Prints one part's table and leaves its figures where the command collects them. */
export function tell(part: string, rows: Readonly<Record<string, Row>>, figures: unknown = rows): void {
  const load = loadavg()[0]?.toFixed(1) ?? '?';
  console.log(`\n${part}; load average ${load}`);
  console.table(rows);
  const folder = process.env['BENCH_OUT'];
  if (folder) writeFileSync(join(folder, `${part}.json`), JSON.stringify({ load: Number(load), figures }));
}
