import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { copiesAt, type Did, logOf, sheetOf } from '../made-log';

const asked: FactId = 'mul-7-8';
const others: readonly FactId[] = ['mul-4-6', 'mul-4-7', 'mul-4-9', 'mul-3-4', 'mul-4-8', 'mul-6-4'];
const set = [asked, ...others];

/** One answer to 7 × 8 a day, and all the other facts right in about a second. */
const days = (answers: readonly Did[], othersMs = 1100, perDay = 1) =>
  Array.from({ length: Math.ceil(answers.length / perDay) }, (_, at) =>
    sheetOf(at, [
      ...others.map((fact): Did => [fact, othersMs + at * 10]),
      ...answers.slice(at * perDay, (at + 1) * perDay),
    ]),
  );

const times = (count: number, did: Did): readonly Did[] => Array.from({ length: count }, () => did);
const right = (ms: number): Did => [asked, ms];
const wrong: Did = [asked, 1500, '54'];

const read = (answers: readonly Did[], hand = 400) => {
  const sats = [copiesAt(0, hand), ...days(answers)];
  return readFacts(logOf(sats, set)).get(asked);
};

describe('a fact', () => {
  it('right and thought of in under 3 s is quick', () => {
    const reading = read(times(12, right(1300)));
    expect(reading?.state).toBe('quick');
    expect(reading?.sureness).toBeGreaterThan(0.9);
    expect(reading?.thinkMs).toBeGreaterThan(800);
    expect(reading?.thinkMs).toBeLessThan(1000);
    expect(reading).toMatchObject({ answers: 12, right: 12, days: 12, thinkIsAtMost: false });
  });

  it('right but longer is slow', () => {
    expect(read(times(12, right(5200)))?.state).toBe('slow');
  });

  it('now right and now wrong is uneven', () => {
    expect(
      read([right(1300), wrong, right(1200), wrong, wrong, right(1200), right(1100), wrong])?.state,
    ).toBe('uneven');
  });

  it('wrong is to learn', () => {
    expect(read(times(5, wrong))?.state).toBe('toLearn');
  });

  it('the hands’ own time is no thinking: 3.3 s to the first key are quick where the hands take 2', () => {
    expect(read(times(12, right(3300)), 2000)?.state).toBe('quick');
    expect(read(times(12, right(4600)), 400)?.state).toBe('slow');
  });

  it('new answers weigh more: learned lately, it is quick; forgotten lately, it is not', () => {
    const learned = read([...times(6, wrong), ...times(34, right(1200))]);
    const forgotten = read([...times(34, right(1200)), ...times(6, wrong)]);
    expect(learned?.state).toBe('quick');
    expect(forgotten?.state).not.toBe('quick');
    expect(learned?.accuracy.share).toBeGreaterThan(forgotten?.accuracy.share ?? 1);
  });
});

describe('not enough answers', () => {
  it('are two, however right', () => {
    expect(read(times(2, right(1000)))).toMatchObject({ state: 'notEnough', notEnough: 'fewAnswers' });
  });

  it('are many of one day', () => {
    const sats = [copiesAt(0, 400), sheetOf(0, times(12, right(1000)))];
    expect(readFacts(logOf(sats, set)).get(asked)).toMatchObject({ state: 'notEnough', notEnough: 'oneDay' });
  });

  it('are three right ones: chance alone gives them to a fact known by half one time in eight', () => {
    expect(read(times(3, right(1000)))).toMatchObject({ state: 'notEnough', notEnough: 'notSure' });
  });

  it('are those without times, where quick and slow can’t be told', () => {
    const sats = days(times(12, right(1000))).map((sat) => ({
      ...sat,
      keepTimes: false,
      visits: sat.visits.map((visit) => ({ ...visit, onsetMs: null, endMs: null, keys: [] })),
    }));
    expect(readFacts(logOf(sats, set)).get(asked)).toMatchObject({
      state: 'notEnough',
      notEnough: 'noTimes',
    });
  });

  it('whatever the others of the set are, no state comes of fewer than three answers on two days', () => {
    const answer = fc.constantFrom<Did>(right(900), right(6000), wrong, [asked, 900, null]);
    fc.assert(
      fc.property(
        fc.array(answer, { maxLength: 2 }),
        fc.array(answer, { minLength: 3, maxLength: 9 }),
        (few, oneDay) => {
          const padded = [
            copiesAt(0, 400),
            ...days([]),
            ...days(few),
            ...Array.from({ length: 20 }, (_, at) =>
              sheetOf(
                30 + at,
                others.map((fact): Did => [fact, 900]),
              ),
            ),
          ];
          expect(readFacts(logOf(padded, set)).get(asked)?.state ?? 'notEnough').toBe('notEnough');
          const single = [copiesAt(0, 400), sheetOf(0, oneDay)];
          expect(readFacts(logOf(single, set)).get(asked)?.state).toBe('notEnough');
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('what stands beside a fact', () => {
  const known = times(9, right(1200));

  it('takes sureness away and never gives any: a weak set, a weak turn-around', () => {
    const alone = readFacts(logOf([copiesAt(0, 400), ...known.map((did, at) => sheetOf(at, [did]))], set));
    const sureAlone = alone.get(asked)?.sureness ?? 0;
    const weak = known.map((did, at) =>
      sheetOf(at, [did, ...others.map((fact): Did => [fact, 1200, at % 2 ? '1' : '2'])]),
    );
    const strong = known.map((did, at) => sheetOf(at, [did, ...others.map((fact): Did => [fact, 1200])]));
    const turned = known.map((did, at) => sheetOf(at, [did, ['mul-8-7', 1200, '54']]));
    const sureBeside = [weak, strong, turned].map(
      (sats) => readFacts(logOf([copiesAt(0, 400), ...sats], [...set, 'mul-8-7'])).get(asked)?.sureness ?? 0,
    );
    for (const sureness of sureBeside) expect(sureness).toBeLessThanOrEqual(sureAlone + 1e-9);
    expect(sureBeside[0]).toBeLessThan(sureAlone);
    expect(sureBeside[2]).toBeLessThan(sureAlone);
  });

  it('never makes one weak fact of a strong set quick', () => {
    const mixed = [
      right(1200),
      wrong,
      right(1200),
      wrong,
      right(1200),
      wrong,
      right(1200),
      wrong,
      right(1200),
      wrong,
    ];
    expect(read(mixed)?.state).toBe('uneven');
  });
});

describe('answers that say nothing', () => {
  it('are slips the parent ruled, voided sheets, work not the child’s own, and cards that showed the fact', () => {
    const good = times(10, right(1200));
    const sats = [copiesAt(0, 400), ...days([...good, wrong])];
    const last = sats.at(-1);
    const place = others.length;
    const ruled = (sat: (typeof sats)[number]) =>
      sat === last ? { ...noRulings, slips: new Map([[place, true]]) } : noRulings;
    const asMiss = readFacts(logOf(sats, set)).get(asked);
    const asSlip = readFacts(logOf(sats, set, {}, ruled)).get(asked);
    expect(asSlip?.sureness).toBeGreaterThan(asMiss?.sureness ?? 1);
    for (const ruling of [{ voided: true }, { notOwnWork: true }]) {
      const away = readFacts(
        logOf(sats, set, {}, (sat) => (sat === last ? { ...noRulings, ...ruling } : noRulings)),
      );
      expect(away.get(asked)?.answers).toBe(10);
    }
    const shown = sats.map((sat) => ({
      ...sat,
      visits: sat.visits.map((visit) => ({ ...visit, shown: true as const })),
    }));
    expect(readFacts(logOf(shown, set)).size).toBe(0);
  });

  it('are those with the clock where days without it are near: a flustered child still knows', () => {
    const calm = days(times(12, right(1200)));
    const timed = Array.from({ length: 10 }, (_, at) =>
      sheetOf(12 + at, [wrong], { clock: { allowanceMs: 45_000, sight: 'thread' } }),
    );
    const reading = readFacts(logOf([copiesAt(0, 400), ...calm, ...timed], set)).get(asked);
    expect(reading).toMatchObject({ state: 'quick', withoutClock: true, answers: 22, right: 12 });
  });
});

describe('many answers', () => {
  const clock = { allowanceMs: 45_000, sight: 'thread' } as const;
  const few = days([right(1200), right(1300), wrong, right(1250)]);
  const timed = (answers: readonly Did[]) =>
    answers.map((did, at) => sheetOf(few.length + at, [did], { clock }));
  const readWith = (answers: readonly Did[]) =>
    readFacts(logOf([copiesAt(0, 400), ...few, ...timed(answers)], set)).get(asked);

  it('of which those without the clock settle nothing speak together: now right and now wrong', () => {
    const mixed = Array.from({ length: 13 }, (_, at): Did => (at % 3 === 0 ? wrong : right(1200)));
    expect(readWith(mixed)).toMatchObject({ state: 'uneven', answers: 17, right: 11, withoutClock: false });
  });

  it('with the clock alone never make a fact quick that was wrong without it', () => {
    expect(readWith(times(16, right(1200)))).toMatchObject({ state: 'notEnough', withoutClock: true });
  });

  it('speak for themselves where a strong set would have them luck', () => {
    const thirds = Array.from({ length: 15 }, (_, at): Did => (at % 3 === 0 ? right(1300) : wrong));
    expect(read(thirds)?.state).toBe('toLearn');
  });
});

describe('a fact that was never wrong', () => {
  const every = Array.from({ length: 15 }, (_, at) => at);
  const clock = { allowanceMs: 45_000, sight: 'thread' } as const;

  it('in 15 answers has a word, however weak its set and its turn-around, whichever days had the clock', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 700, max: 9000 }),
        fc.integer({ min: 1, max: 4 }),
        fc.array(fc.boolean(), { minLength: 15, maxLength: 15 }),
        (ms, wrongEvery, clocks) => {
          const sats = every.map((at) =>
            sheetOf(
              at,
              [
                right(ms + 40 * at),
                ['mul-8-7', 1200, at % wrongEvery === 0 ? '54' : '56'],
                ...others.map((fact): Did => [fact, 1200, at % wrongEvery === 0 ? '1' : '24']),
              ],
              clocks[at] ? { clock } : {},
            ),
          );
          const reading = readFacts(logOf([copiesAt(0, 400), ...sats], [...set, 'mul-8-7'])).get(asked);
          expect(reading?.state).not.toBe('notEnough');
          expect(reading).toMatchObject({ answers: 15, right: 15 });
        },
      ),
      { numRuns: 25 },
    );
  });

  it('now quick and now slow is uneven in its pace, not in coming right', () => {
    const reading = read(every.map((at) => right(at % 2 === 0 ? 2600 : 4600)));
    expect(reading).toMatchObject({ state: 'uneven', unevenIn: 'pace' });
  });

  it('on days of both kinds is not held back by those with the clock', () => {
    const sats = every.slice(0, 10).map((at) => sheetOf(at, [right(1200)], at % 2 === 0 ? { clock } : {}));
    expect(readFacts(logOf([copiesAt(0, 400), ...sats], set)).get(asked)?.state).toBe('quick');
  });
});

describe('what a word rests on', () => {
  it('is told with the slips left out and the answers accepted', () => {
    const missed = days([...times(9, right(1200)), wrong]);
    const at = missed.at(-1);
    const rule = (rulings: Partial<typeof noRulings>) =>
      readFacts(logOf(missed, set, {}, (sat) => (sat === at ? { ...noRulings, ...rulings } : noRulings))).get(
        asked,
      );
    const place = others.length;
    expect(rule({})).toMatchObject({ slips: 0, spoken: { right: 9, of: 10, accepted: 0 } });
    expect(rule({ slips: new Map([[place, true]]) })).toMatchObject({
      slips: 1,
      spoken: { right: 9, of: 9, accepted: 0 },
    });
    expect(rule({ accepted: new Set([place]) })).toMatchObject({
      slips: 0,
      spoken: { right: 10, of: 10, accepted: 1 },
    });
  });
});

describe('kinds of facts', () => {
  it('ties, and 0 and 1, are told apart', () => {
    const sats = [
      sheetOf(0, [
        ['mul-7-7', 900],
        ['mul-1-8', 900],
        ['add-0-4', 900],
        ['mul-7-8', 900],
        ['add-6-6', 900],
      ]),
    ];
    const readings = readFacts(logOf(sats, set));
    const apart = [...readings.values()].map((reading) => [reading.fact.id, reading.apart]);
    expect(Object.fromEntries(apart)).toEqual({
      'mul-7-7': 'tie',
      'mul-1-8': 'zeroOrOne',
      'add-0-4': 'zeroOrOne',
      'mul-7-8': null,
      'add-6-6': 'tie',
    });
  });
});
