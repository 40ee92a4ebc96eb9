import { describe, expect, test } from 'vitest';
import type { Away, SittingPlan, Visit } from '../../src/core/record/sat';
import type { SittingState } from '../../src/core/sitting/machine';
import { startRun } from '../../src/state/sitting-run';
import { type FakePorts, fakePorts } from './fake-ports';

const untimed: SittingPlan = {
  child: 'ann',
  purpose: 'sheet',
  of: null,
  set: 'times-3',
  seed: 1,
  prompts: ['mul-3-2', 'mul-3-4', 'mul-3-5'],
  clock: null,
  takesItself: false,
  onWrong: 'goOn',
  keepTimes: true,
};
const timed: SittingPlan = {
  ...untimed,
  clock: { allowanceMs: 10_000, sight: 'thread' },
  takesItself: true,
};

function begin(
  plan: SittingPlan,
  ports: FakePorts = fakePorts(),
  resumed: Parameters<typeof startRun>[3] = null,
) {
  const visits = new Map<number, Visit>();
  const away = new Map<number, Away>();
  const told: string[] = [];
  let state: SittingState | null = null;
  const run = startRun(
    { plan },
    ports,
    {
      visitClosed: (index, visit) => {
        told.push(`visit ${index}`);
        visits.set(index, visit);
      },
      awayNoted: (index, span) => {
        told.push(`away ${index}`);
        away.set(index, span);
      },
      bell: () => told.push('bell'),
      ended: (ended) => {
        told.push('ended');
        state = ended;
      },
    },
    resumed,
  );
  const show = () => run.shown(run.card.value.showing, ports.monotonic(), 'element');
  /** Reads the card for a second, then types. */
  const type = (...keys: Parameters<typeof run.press>[0][]) => {
    ports.pass(1000);
    for (const key of keys) run.press(key, ports.monotonic(), 'keys');
  };
  return { run, ports, visits, away, told, show, type, ended: () => state };
}

describe('the bell', () => {
  test('is armed by the first onset, not by the sitting’s beginning', () => {
    const { run, ports, told, show } = begin(timed);
    ports.pass(60_000);
    expect(told).toEqual([]);
    expect(run.thread.value).toEqual({ allowanceMs: 10_000, elapsedMs: 0, running: false });
    show();
    expect(run.thread.value).toMatchObject({ elapsedMs: 0, running: true });
    ports.pass(10_000);
    expect(told).toEqual([]);
    ports.pass(2);
    expect(told).toEqual(['bell']);
  });

  test('rings at the time of a better reading of that onset', () => {
    const { run, ports, told } = begin(timed);
    run.shown(1, ports.monotonic(), 'frame');
    run.shown(1, ports.monotonic() + 400, 'element');
    ports.pass(10_002);
    expect(told).toEqual([]);
    ports.pass(400);
    expect(told).toEqual(['bell']);
  });

  test('rings once, and the card on the screen may still be finished', () => {
    const { run, ports, told, show, type, ended } = begin(timed);
    show();
    expect(run.rang.value).toBe(false);
    ports.pass(30_000);
    expect(run.rang.value).toBe(true);
    type('6');
    expect(told).toEqual(['bell', 'visit 0', 'ended']);
    expect(ended()?.ended).toBe('bell');
    expect(run.card.value.showing).toBe(1);
  });

  test('a key is judged by its own time stamp, however late it is handled', () => {
    const { run, ports, visits, show } = begin(timed);
    show();
    const atBell = ports.monotonic() + 10_000;
    ports.pass(10_050);
    run.press('6', atBell, 'touch');
    expect(visits.get(0)).toMatchObject({ given: '6', took: 'itself' });
    expect(visits.get(0)?.afterBell).toBeUndefined();
  });

  test('is not armed without a clock, and no thread is seen', () => {
    const { run, ports, told, show } = begin(untimed);
    show();
    ports.pass(600_000);
    expect(told).toEqual([]);
    expect(run.thread.value).toBeNull();
    expect(ports.timers()).toBe(0);
  });

  test('a hidden clock shows no thread and rings all the same', () => {
    const { run, ports, told, show } = begin({ ...timed, clock: { allowanceMs: 10_000, sight: 'hidden' } });
    show();
    expect(run.thread.value).toBeNull();
    ports.pass(10_002);
    expect(told).toEqual(['bell']);
  });

  test('leaves no timer behind when the sheet is finished before it', () => {
    const { ports, show, type, ended } = begin(timed);
    show();
    type('6');
    show();
    type('1', '2');
    show();
    type('1', '5');
    expect(ended()?.ended).toBe('finished');
    expect(ports.timers()).toBe(0);
  });
});

describe('the screen', () => {
  test('what is typed stands on the card, and a decided card brings the next', () => {
    const { run, show, type } = begin(untimed);
    show();
    type('1', '2');
    expect(run.entry.value).toBe('12');
    type('back');
    expect(run.entry.value).toBe('1');
    const { showing } = run.card.value;
    type('done');
    expect(run.card.value).toMatchObject({ prompt: 'mul-3-4', whole: false, wrote: null });
    expect(run.card.value.showing).toBeGreaterThan(showing);
    expect(run.entry.value).toBe('');
  });

  test('mending shows what was written, and after a second miss the whole fact instead', () => {
    const ports = fakePorts();
    const plan: SittingPlan = { ...untimed, purpose: 'mending', onWrong: 'showAgain' };
    const run = startRun({ plan, gave: ['9', null, null] }, ports, {
      visitClosed: () => {},
      awayNoted: () => {},
      bell: () => {},
      ended: () => {},
    });
    expect(run.card.value).toMatchObject({ whole: false, wrote: '9' });
    run.shown(1, ports.monotonic(), 'element');
    ports.pass(1000);
    for (const key of ['8', 'done'] as const) run.press(key, ports.monotonic(), 'touch');
    expect(run.card.value).toMatchObject({ prompt: 'mul-3-2', whole: true, wrote: null });
  });
});

describe('interruptions', () => {
  test('leaving voids the card, coming back shows it again without a clock, and both are noted', () => {
    const { run, ports, visits, away, told, show } = begin(timed);
    show();
    ports.pass(2000);
    run.leave('hidden');
    expect(run.isAway.value).toBe(true);
    expect(visits.get(0)).toMatchObject({ place: 0, end: 'left', given: null });
    expect(away.get(0)).toMatchObject({ why: 'hidden', toMs: null });
    ports.pass(5000);
    run.comeBack();
    expect(run.isAway.value).toBe(false);
    expect(away.get(0)).toMatchObject({ fromMs: 2000, toMs: 7000, afterVisits: 1 });
    expect(run.card.value).toMatchObject({ prompt: 'mul-3-2' });
    expect(run.thread.value).toBeNull();
    show();
    ports.pass(60_000);
    expect(told).toEqual(['visit 0', 'away 0', 'away 0']);
  });

  test('leaving twice, or after the end, is leaving once', () => {
    const { run, away, show, ended } = begin(timed);
    show();
    run.leave('hidden');
    run.leave('asleep');
    expect(away.size).toBe(1);
    run.stop();
    expect(ended()?.ended).toBe('stopped');
    run.leave('hidden');
    run.comeBack();
    expect(away.size).toBe(1);
  });

  test('a device that slept is found out by its clocks at the next key, which is not entered', () => {
    const { run, ports, away, show, type } = begin(timed);
    show();
    ports.setWallClock(ports.now() + 3_600_000);
    type('6');
    expect(away.get(0)).toMatchObject({ why: 'clocks' });
    expect(run.isAway.value).toBe(false);
    expect(run.entry.value).toBe('');
    expect(run.thread.value).toBeNull();
    show();
    type('6');
    expect(run.card.value.prompt).toBe('mul-3-4');
  });

  test('time spent away, with the clock set meanwhile, is no second interruption', () => {
    const { run, ports, away, show, type } = begin(timed);
    show();
    run.leave('hidden');
    ports.setWallClock(ports.now() + 60_000);
    run.comeBack();
    show();
    type('6');
    expect(away.size).toBe(1);
  });
});

describe('taken up again from a journal', () => {
  const first: Visit = {
    place: 0,
    onsetMs: 12,
    onsetBy: 'element',
    keys: [['6', 900, 'keys']],
    end: 'taken',
    endMs: 900,
    given: '6',
    took: 'itself',
  };

  test('waits where it was, and goes on counting from there', () => {
    const { run, ports, visits, away, show, type } = begin(timed, fakePorts(), {
      visits: [first],
      away: [],
      elapsedMs: 30_000,
    });
    expect(run.isAway.value).toBe(true);
    expect(run.card.value.prompt).toBe('mul-3-4');
    ports.pass(1000);
    run.comeBack();
    expect(away.get(0)).toMatchObject({ why: 'torn', fromMs: 900, toMs: 31_000 });
    show();
    type('1', '2');
    expect(visits.get(1)).toMatchObject({ place: 1, onsetMs: 31_000, endMs: 32_000, given: '12' });
  });
});

test('without times nothing is told with a time in it', () => {
  const { run, visits, away, show, type } = begin({ ...timed, keepTimes: false });
  show();
  type('6');
  show();
  run.leave('hidden');
  run.comeBack();
  const kept = JSON.stringify([...visits.values(), ...away.values()]);
  expect(JSON.parse(kept)).toHaveLength(3);
  for (const visit of visits.values()) expect(visit).toMatchObject({ onsetMs: null, endMs: null });
  expect(kept).not.toMatch(/\d{3,}/);
});
