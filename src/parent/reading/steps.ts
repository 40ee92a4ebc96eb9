/** Work that can be broken off after each step and taken up again. */
export type Steps<T> = Generator<undefined, T, undefined>;

/** How long steps go on before the page gets its turn, ms: under a frame. */
const turnMs = 10;

/** Runs steps from the next task on, a few at a time, then hands over the result; returns what stops it. */
export function runSteps<T>(steps: Steps<T>, done: (result: T) => void): () => void {
  function takeTurn() {
    const untilMs = performance.now() + turnMs;
    do {
      const step = steps.next();
      if (step.done) return done(step.value);
    } while (performance.now() < untilMs);
    waiting = setTimeout(takeTurn);
  }
  let waiting = setTimeout(takeTurn);
  return () => clearTimeout(waiting);
}
