/**
 * Times of single acts, s, for somebody who does a known task without a mistake: the keystroke-level model of Card, Moran &
 * Newell 1980, Communications of the ACM 23, 396–410 (K for an average typist; B and H as there; a finger points like
 * a hand on a mouse).
 */
const acts = { key: 0.28, point: 1.1, press: 0.1, hand: 0.4, think: 1.35 } as const;

export type Act = keyof typeof acts;

/** Counts what a person does, and says how long the model gives it. */
export class Keystrokes {
  readonly #counts: Record<Act, number> = { key: 0, point: 0, press: 0, hand: 0, think: 0 };

  add(act: Act, times = 1): void {
    this.#counts[act] += times;
  }

  get counts(): Readonly<Record<Act, number>> {
    return this.#counts;
  }

  get seconds(): number {
    return (Object.keys(acts) as Act[]).reduce((sum, act) => sum + acts[act] * this.#counts[act], 0);
  }
}
