import { mean, standardDeviation } from 'simple-statistics';
import { afterEach, test } from 'vitest';
import type { BrowserContext } from '../journeys/browser';
import { keyHand } from '../journeys/child-hand';
import { closeDevices, type DeviceOptions, openDevice } from '../journeys/device';
import { beginSheet } from '../journeys/morning';
import { storedVisits } from '../journeys/stored';
import { moveIn } from './bench-home';
import { type Condition, conditionNames, conditions, under } from './conditions';
import { at, type Figure, figureOf, written } from './figures';
import { closePages, openPage } from './open-page';
import { markCards } from './presented';
import { answerCards, type Timed } from './sitting-to-time';
import { cardsARound, rounds, tell } from './told';

afterEach(async () => {
  await closeDevices();
  await closePages();
});

/** One round: recorded less true response times, and key to next card; ms. */
interface Round {
  readonly errors: readonly number[];
  readonly toNext: readonly number[];
}

type Way = (condition: Condition) => Promise<Round>;

const digits = (answer: string) => [...answer];

/** The app on a sheet of 100 without the clock, journal, sound and readings running. */
const appBy =
  (wanted: string, options: DeviceOptions = {}): Way =>
  async (condition) => {
    const device = await openDevice({
      ...options,
      before: async (context) => {
        await options.before?.(context);
        await context.addInitScript(markCards);
      },
    });
    const { page, cdp } = device;
    await moveIn(page, { length: 100, minutes: 120, cards: false, lookBackEvery: 0 });
    await beginSheet(page, () => keyHand(device));
    await under(condition, page, cdp);
    const timed = await answerCards(
      { page, cdp, keysOf: ({ answer }) => [...digits(answer), 'Enter'] },
      cardsARound,
    );
    const visits = await storedVisits(page);
    const errors = timed.flatMap(({ nth, shownMs, firstKeyMs }) => {
      const visit = visits[nth];
      const key = visit?.keys[0]?.[1];
      if (visit?.onsetBy !== wanted || key === undefined || key === null || visit.onsetMs === null) return [];
      return [key - visit.onsetMs - (firstKeyMs - shownMs)];
    });
    await device.close();
    return { errors, toNext: toNextOf(timed) };
  };

/** The general-purpose library, one key an answer. */
const peer: Way = async (condition) => {
  const { page, cdp, close } = await openPage('peer');
  await under(condition, page, cdp);
  const timed = await answerCards({ page, cdp, keysOf: () => ['1'] }, cardsARound);
  const told = await page.evaluate(() => (globalThis as unknown as { told: readonly number[] }).told);
  const errors = timed.flatMap(({ card, shownMs, firstKeyMs }) => {
    const rt = told[Number(card.slice('card-'.length))];
    return rt === undefined ? [] : [rt - (firstKeyMs - shownMs)];
  });
  await close();
  return { errors, toNext: toNextOf(timed) };
};

/** The bare page, which records nothing. */
const floor: Way = async (condition) => {
  const { page, cdp, close } = await openPage('floor');
  await under(condition, page, cdp);
  const timed = await answerCards({ page, cdp, keysOf: () => ['1', '2'] }, cardsARound);
  await close();
  return { errors: [], toNext: toNextOf(timed) };
};

function toNextOf(timed: readonly Timed[]): readonly number[] {
  return timed.flatMap(({ toNextMs }) => toNextMs ?? []);
}

/** As a plain host serves a first visit: without the headers that isolate a page. */
function withoutIsolation(context: BrowserContext): Promise<unknown> {
  return context.route('**/*', async (route) => {
    const response = await route.fetch();
    const headers = Object.entries(response.headers()).filter(([name]) => !name.startsWith('cross-origin-'));
    await route.fulfill({ response, headers: Object.fromEntries(headers) });
  });
}

const ways: Readonly<Record<string, { readonly way: Way; readonly in: readonly Condition[] }>> = {
  app: { way: appBy('element'), in: conditions },
  peer: { way: peer, in: conditions },
  floor: { way: floor, in: ['idle', 'slow'] },
  'app without Element Timing': {
    way: appBy('frame', {
      before: (context) =>
        context.addInitScript(() => {
          Object.defineProperty(PerformanceObserver, 'supportedEntryTypes', { value: [] });
        }),
    }),
    in: ['idle', 'slow'],
  },
  'app not isolated': {
    way: appBy('elementCoarse', { isWorkerless: true, serviceWorkers: 'block', before: withoutIsolation }),
    in: ['idle'],
  },
};

test('response times and the wait for the next card', async () => {
  const made = new Map<string, Round[]>();
  // Round by round, so that whatever else the machine does falls on all alike.
  for (let round = 0; round < rounds; round += 1) {
    for (const [name, { way, in: of }] of Object.entries(ways)) {
      for (const condition of of) {
        const key = `${name}, ${conditionNames[condition]}`;
        made.set(key, [...(made.get(key) ?? []), await way(condition)]);
      }
    }
  }
  const figures = Object.fromEntries([...made].map(([name, all]) => [name, figuresOf(all)]));
  tell(
    'response-time error, ms',
    tableOf(figures, (figure) => figure.error),
  );
  tell(
    'key to next card, ms',
    tableOf(figures, (figure) => figure.toNext),
  );
  tell('cards', {}, figures);
});

type Figures = Readonly<Record<string, Figure>>;

function figuresOf(all: readonly Round[]): {
  readonly error: Figures | null;
  readonly toNext: Figures | null;
} {
  const over = (of: (round: Round) => readonly number[], what: (values: readonly number[]) => number) =>
    figureOf(all.map((round) => what(of(round))));
  const errors = ({ errors }: Round) => errors;
  const sizes = ({ errors }: Round) => errors.map(Math.abs);
  const next = ({ toNext }: Round) => toNext;
  const has = (of: (round: Round) => readonly number[]) => all.every((round) => of(round).length > 2);
  return {
    error: has(errors)
      ? {
          mean: over(errors, (values) => mean([...values])),
          sd: over(errors, (values) => standardDeviation([...values])),
          'p50 of |error|': over(sizes, (values) => at(values, 0.5)),
          'p95 of |error|': over(sizes, (values) => at(values, 0.95)),
          'p99 of |error|': over(sizes, (values) => at(values, 0.99)),
          cards: over(errors, (values) => values.length),
        }
      : null,
    toNext: has(next)
      ? {
          p50: over(next, (values) => at(values, 0.5)),
          p95: over(next, (values) => at(values, 0.95)),
          p99: over(next, (values) => at(values, 0.99)),
        }
      : null,
  };
}

function tableOf<F>(figures: Readonly<Record<string, F>>, pick: (of: F) => Figures | null) {
  return Object.fromEntries(
    Object.entries(figures).flatMap(([name, of]) => {
      const picked = pick(of);
      if (!picked) return [];
      return [
        [
          name,
          Object.fromEntries(
            Object.entries(picked).map(([what, figure]) => [what, written(figure, what === 'cards' ? 0 : 2)]),
          ),
        ],
      ];
    }),
  );
}
