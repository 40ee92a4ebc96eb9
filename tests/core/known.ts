import type { Fact } from '../../src/core/fact/fact';
import { knownFact } from '../../src/core/fact/fact-list';

/** The fact of that id; a test that names none is wrong itself. */
export function known(id: string): Fact {
  const fact = knownFact(id);
  if (!fact) throw new Error(`no fact ${id}`);
  return fact;
}
