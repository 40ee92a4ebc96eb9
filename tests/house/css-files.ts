import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** The style sheets of one part of `src`. */
export function files(part: string): readonly string[] {
  const folder = join(import.meta.dirname, '../../src', part);
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.css'))
    .map((name) => join(folder, name));
}
