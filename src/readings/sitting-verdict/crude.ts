import type { FactId } from '../../core/fact/fact';
import type { Answer } from '../child-log/answer';

interface Kind {
  count: number;
  failed: number;
  timed: number;
  log: number;
  logSquares: number;
}

const kind = (): Kind => ({ count: 0, failed: 0, timed: 0, log: 0, logSquares: 0 });

/** Under so many standard errors, days not set side by side, no exact test would find anything. */
const fewestErrors = 1.2;

/**
 * A running comparison of answers with and without the clock, fact by fact. Ten years hold hundreds of looks; this
 * spares most of them the exact tests, and can only keep a look from finding something.
 */
export class Crude {
  readonly #facts = new Map<FactId, { readonly with: Kind; readonly without: Kind }>();

  add(answers: readonly Answer[]): void {
    for (const { fact, firstKeyMs, outcome, withClock } of answers) {
      let own = this.#facts.get(fact.id);
      if (!own) {
        own = { with: kind(), without: kind() };
        this.#facts.set(fact.id, own);
      }
      const into = withClock ? own.with : own.without;
      into.count += 1;
      if (outcome !== 'right') into.failed += 1;
      if (firstKeyMs === null) continue;
      const log = Math.log(firstKeyMs);
      into.timed += 1;
      into.log += log;
      into.logSquares += log * log;
    }
  }

  clear(): void {
    this.#facts.clear();
  }

  mayFind(): boolean {
    return this.#errorsSlower() >= fewestErrors || this.#errorsWronger() >= fewestErrors;
  }

  /** Mantel and Haenszel's failures over those expected, in standard errors. */
  #errorsWronger(): number {
    let [over, variance] = [0, 0];
    for (const { with: one, without: other } of this.#facts.values()) {
      const all = one.count + other.count;
      const failed = one.failed + other.failed;
      if (all < 2) continue;
      over += one.failed - (one.count * failed) / all;
      variance += (one.count * other.count * failed * (all - failed)) / (all * all * (all - 1));
    }
    return variance === 0 ? 0 : over / Math.sqrt(variance);
  }

  /** Mean difference of log times over the facts, each by how well it is known, in standard errors. */
  #errorsSlower(): number {
    let [over, weights, squares, spare] = [0, 0, 0, 0];
    for (const { with: one, without: other } of this.#facts.values()) {
      for (const { timed, log, logSquares } of [one, other]) {
        if (timed === 0) continue;
        squares += logSquares - (log * log) / timed;
        spare += timed - 1;
      }
      if (one.timed === 0 || other.timed === 0) continue;
      const weight = (one.timed * other.timed) / (one.timed + other.timed);
      over += weight * (one.log / one.timed - other.log / other.timed);
      weights += weight;
    }
    if (spare === 0 || weights === 0 || squares <= 0) return over > 0 ? fewestErrors : 0;
    return over / Math.sqrt((squares / spare) * weights);
  }
}
