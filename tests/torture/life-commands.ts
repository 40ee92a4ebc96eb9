import fc from 'fast-check';
import { expect } from 'vitest';
import { keptVisit } from '../../src/core/sitting/machine';
import { child, type Device } from './random-life';

/** What a simple mind expects of a life. */
export interface Model {
  /** Visits acknowledged of the sitting that stands open, as text; `null` when none does. */
  acknowledged: readonly string[] | null;
  /** Sheets finished today. */
  sheets: { readonly id: string; voidedBy: string | null }[];
}

type Command = fc.Command<Model, Device>;
type Does = 'right' | 'wrong' | 'skip';

/** Any life: what a child, a parent and a failing battery may do, in any order. */
export function anyLife(length: number): fc.Arbitrary<Iterable<Command>> {
  return fc.commands(
    [
      fc.nat(20).map((nth) => begin(nth)),
      fc
        .array(fc.constantFrom<Does>('right', 'right', 'right', 'wrong', 'skip'), {
          minLength: 1,
          maxLength: 12,
        })
        .map(cards),
      fc.constant(crash),
      fc.constant(leave),
      fc.constant(stop),
      fc.constant(nextDay),
      fc.constant(voidLast),
      fc.constant(takeBackVoid),
      fc.constantFrom('times-2', 'times-3', 'times-4').map(changeSet),
      fc.boolean().map(changeClock),
    ],
    { maxCommands: length, size: 'max' },
  );
}

/** The steps that are left are sat, all right: the day comes to its end. */
export function sitToTheEnd(device: Device): void {
  for (let steps = 0; steps < 60; steps += 1) {
    while (device.open) device.card('right');
    const step = device.plan().steps.find((one) => 'plan' in one);
    if (!step || !('plan' in step)) return;
    device.begin(step.plan);
  }
  throw new Error('The day does not end.');
}

const command = (name: string, check: Command['check'], run: Command['run']): Command => ({
  check,
  run(model, device) {
    run(model, device);
    agree(model, device);
  },
  toString: () => name,
});

const begin = (nth: number) =>
  command(
    `begin(${nth})`,
    ({ acknowledged }) => acknowledged === null,
    (model, device) => {
      const { steps, again } = device.plan();
      const plans = steps.flatMap((step) => ('plan' in step ? [step.plan] : []));
      // Mostly what is next; now and then a card round is passed over, or one more sheet is wanted.
      const plan = (nth === 0 ? plans.find(({ purpose }) => purpose !== 'cards') : plans[0]) ?? again;
      if (!plan) return;
      device.begin(plan);
      model.acknowledged = [];
    },
  );

const cards = (doings: readonly Does[]) =>
  command(
    `cards(${doings.join(' ')})`,
    ({ acknowledged }) => acknowledged !== null,
    (model, device) => {
      for (const does of doings) {
        if (!device.open) break;
        device.card(does);
        heard(model, device);
      }
    },
  );

const crash = command(
  'crash',
  ({ acknowledged }) => acknowledged !== null,
  (model, device) => {
    const before = device.open?.state;
    device.crash();
    heard(model, device);
    const after = device.open?.state;
    // The same card again.
    if (before && after) expect([after.place, after.shown]).toEqual([before.place, before.shown]);
  },
);

const leave = command(
  'leave and come back',
  ({ acknowledged }) => acknowledged !== null,
  (model, device) => {
    device.leave();
    heard(model, device);
  },
);

const stop = command(
  'stop',
  ({ acknowledged }) => acknowledged !== null,
  (model, device) => {
    device.stop();
    heard(model, device);
  },
);

const nextDay = command(
  'next day',
  ({ acknowledged }) => acknowledged === null,
  (model, device) => {
    device.nextDay();
    model.sheets = [];
  },
);

const voidLast = command(
  'void the last sheet',
  ({ sheets }) => sheets.some(({ voidedBy }) => voidedBy === null),
  (model, device) => {
    const sheet = model.sheets.findLast(({ voidedBy }) => voidedBy === null);
    if (!sheet) return;
    sheet.voidedBy = device.add({
      kind: 'ruled',
      child,
      target: sheet.id,
      targetDay: device.day(),
      ruling: { what: 'void' },
    });
  },
);

const takeBackVoid = command(
  'take a voiding back',
  ({ sheets }) => sheets.some(({ voidedBy }) => voidedBy !== null),
  (model, device) => {
    const sheet = model.sheets.find(({ voidedBy }) => voidedBy !== null);
    if (!sheet?.voidedBy) return;
    device.add({ kind: 'undone', target: sheet.voidedBy });
    sheet.voidedBy = null;
  },
);

const changeSet = (set: string) =>
  command(
    `start ${set}`,
    () => true,
    (_, device) => {
      device.add({ kind: 'setStarted', child, set });
    },
  );

const changeClock = (timed: boolean) =>
  command(
    `timed ${timed}`,
    () => true,
    (_, device) => {
      device.add({ kind: 'childSettingsChanged', child, changes: { timed } });
    },
  );

/** What was acknowledged stays as it was, in the journal and then in the record. */
function heard(model: Model, device: Device): void {
  const before = model.acknowledged ?? [];
  if (device.open) {
    const { plan, state, visits } = device.open;
    const kept = visits.map((visit) => JSON.stringify(visit));
    expect(kept.slice(0, before.length)).toEqual(before);
    expect(state.visits.map((visit) => JSON.stringify(keptVisit(plan, visit))).slice(0, kept.length)).toEqual(
      kept,
    );
    model.acknowledged = kept;
    return;
  }
  model.acknowledged = null;
  const sat = device.records.at(-1);
  if (sat?.kind !== 'sat') {
    expect(before).toEqual([]);
    return;
  }
  expect(sat.visits.map((visit) => JSON.stringify(visit)).slice(0, before.length)).toEqual(before);
  if (sat.purpose === 'sheet' && sat.ended === 'finished') model.sheets.push({ id: sat.id, voidedBy: null });
}

/** Log and plan say what the model says, in whatever order the records come. */
function agree(model: Model, device: Device): void {
  const day = device.plan();
  const shown = new Set(day.sheets.map(({ ruled }) => ruled.sat.id));
  for (const { id, voidedBy } of model.sheets) expect([id, shown.has(id)]).toEqual([id, voidedBy === null]);
  if (day.isDone) expect(day.steps.some((step) => 'plan' in step)).toBe(false);
  const { records } = device;
  expect(device.plan([...records.toReversed(), ...records])).toEqual(day);
}
