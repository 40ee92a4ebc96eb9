import type { Fact, FactId } from '../../core/fact/fact';
import { factClass } from '../../core/fact/fact-class';
import { turnAround } from '../../core/fact/family';
import type { Answer } from '../child-log/answer';
import type { ChildLog } from '../child-log/child-log';
import { groupBy } from '../group-by';
import type { Beta } from '../statistics/beta';
import { pooledPrior, type Tally } from '../statistics/pooled-prior';
import type { VarianceParts } from '../statistics/shrinkage';
import type { FactReading } from './fact-reading';
import { type Named, nameState } from './fact-state';
import { accuracyOf, knowing, manyAnswers } from './know';
import { ownLevel, type Pace, paceOf, quickMs } from './pace';
import { daysOf, type Speaking, weighAll, weighAnswers } from './weigh-answers';

/** One fact's answers, and the part of them that speaks. */
interface Own {
  readonly fact: Fact;
  readonly answers: readonly Answer[];
  readonly speaking: Speaking;
  readonly tally: Tally;
}

/** What a set, or the rest of an operation, says of each fact in it. */
interface Pool {
  readonly prior: Beta;
  readonly level: VarianceParts | null;
}

/** Every fact a child has answered, by the pool it was read in; the first set that holds a fact is its pool. */
export function readFacts(log: ChildLog): ReadonlyMap<FactId, FactReading> {
  const byFact = groupBy(
    log.sats.flatMap(({ answers }) => answers),
    ({ fact }) => fact.id,
  ).flatMap(ownOf);
  const tallies = new Map(byFact.map((own) => [own.fact.id, own.tally]));
  const readings = new Map<FactId, FactReading>();
  for (const pooled of groupBy(byFact, ({ fact }) => poolOf(log, fact))) {
    const pool: Pool = {
      prior: pooledPrior(pooled.map(({ tally }) => tally)),
      level: ownLevel(pooled.map(({ speaking }) => speaking.answers)),
    };
    for (const own of pooled) readings.set(own.fact.id, readFact(own, pool, tallies));
  }
  return readings;
}

function ownOf(answers: readonly Answer[]): readonly Own[] {
  const [first] = answers;
  if (!first) return [];
  const speaking = weighAnswers(answers);
  return [{ fact: first.fact, answers, speaking, tally: tallyOf(speaking) }];
}

function tallyOf({ answers }: Speaking): Tally {
  let [right, of] = [0, 0];
  for (const { answer, weight } of answers) {
    of += weight;
    if (answer.outcome === 'right') right += weight;
  }
  return { right, of };
}

function poolOf({ current, kept }: ChildLog, { id, op }: Fact): string {
  const set = [...(current ? [current] : []), ...kept].find(({ facts }) => facts.has(id));
  return set?.id ?? `rest of ${op}`;
}

function readFact(own: Own, pool: Pool, tallies: ReadonlyMap<FactId, Tally>): FactReading {
  const { fact, answers } = own;
  const partner = turnAround(fact);
  const beside = (partner && tallies.get(partner.id)) ?? { right: 0, of: 0 };
  const { speaking, tally, pace, named } = likeliest(own, (of) => nameBy(of, pool, beside));
  const timed = speaking.answers.find(({ answer }) => answer.firstKeyMs !== null);
  const handMs = timed?.answer.handMs ?? null;
  return {
    fact,
    ...named,
    apart: apartOf(fact),
    answers: answers.length,
    right: answers.filter(({ outcome }) => outcome === 'right').length,
    days: daysOf(answers),
    spoken: spokenOf(speaking),
    slips: answers.filter(({ slip }) => slip === true).length,
    lastDay: answers.at(-1)?.day ?? null,
    accuracy: accuracyOf(tally, pool.prior),
    thinkMs: pace === null ? null : thinkMs(pace.value, handMs ?? 0),
    thinkIsAtMost: handMs === null,
    withoutClock: speaking.withoutClock,
  };
}

function spokenOf({ answers }: Speaking): FactReading['spoken'] {
  const right = answers.filter(({ answer }) => answer.outcome === 'right');
  const atEase = answers.filter(({ answer }) => !answer.withClock);
  return {
    of: answers.length,
    right: right.length,
    accepted: right.filter(({ answer }) => answer.accepted).length,
    ofAtEase: atEase.length,
    rightAtEase: atEase.filter(({ answer }) => answer.outcome === 'right').length,
  };
}

/** What a fact is called by the answers that speak. */
interface Called extends Pick<Own, 'speaking' | 'tally'> {
  readonly pace: Pace | null;
  readonly named: Named;
}

/** From so many answers on, none of them wrong, those with the clock speak as well (our own decision, no source). */
const manyRight = 9;

/**
 * By the answers without the clock where they speak alone; where they are too few to be sure, by those of both kinds if
 * they are many, or somewhat fewer and all right. A second look may call a fact known only where nothing was wrong, or
 * weak facts would be called so twice as often.
 */
function likeliest(own: Own, name: (of: Pick<Own, 'speaking' | 'tally'>) => Called): Called {
  const called = name(own);
  if (called.named.notEnough !== 'notSure' || !own.speaking.withoutClock) return called;
  const speaking = weighAll(own.answers);
  const isAllRight = speaking.answers.every(({ answer }) => answer.outcome === 'right');
  if (speaking.answers.length < (isAllRight ? manyRight : manyAnswers)) return called;
  const byAll = name({ speaking, tally: tallyOf(speaking) });
  const { state } = byAll.named;
  return state === 'uneven' || state === 'toLearn' || (state !== 'notEnough' && isAllRight) ? byAll : called;
}

function nameBy({ speaking, tally }: Pick<Own, 'speaking' | 'tally'>, pool: Pool, beside: Tally): Called {
  const spoken = speaking.answers.map(({ answer }) => answer);
  const pace = paceOf(speaking.answers, pool.level);
  const named = nameState({
    answers: spoken.length,
    days: daysOf(spoken),
    right: spoken.filter(({ outcome }) => outcome === 'right').length,
    knowing: knowing(tally, pool.prior, beside, spoken.length),
    pace,
  });
  return { speaking, tally, pace, named };
}

/** Back from the log over the line between quick and slow to ms of thinking. */
function thinkMs(logOverLine: number, handMs: number): number {
  return Math.max(0, (quickMs + handMs) * Math.exp(logOverLine) - handMs);
}

function apartOf(fact: Fact): FactReading['apart'] {
  const kind = factClass(fact);
  return kind === 'tie' || kind === 'zeroOrOne' ? kind : null;
}
