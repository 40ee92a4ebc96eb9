import { expect, test } from 'vitest';
import { planOf, Sitter, start, timed } from './sitter';

const two = ['add-6-2', 'mul-7-8'] as const;

test('a record holds the plan, the start, the visits and the end', () => {
  const sitter = new Sitter(timed(two)).answer('8', 1000, 2000).answer('56', 2017, 3000);
  const sat = sitter.sat();
  expect(sat).toMatchObject({
    ...timed(two),
    ...start,
    kind: 'sat',
    ended: 'finished',
    endedMs: 3100,
    away: [],
  });
  expect(sat.visits).toEqual(sitter.visits);
});

test('a sitting still open is sealed as torn, its card void', () => {
  const sat = new Sitter(planOf(two)).answer('8', 1000, 2000, 'done').shown(2200).key('5', 3000).sat();
  expect(sat).toMatchObject({ ended: 'torn', endedMs: 3000 });
  expect(sat.visits.at(-1)).toMatchObject({ place: 1, end: 'left', endMs: 3000, given: null });
});

test('without times a record has none anywhere, nor what only times tell', () => {
  const sitter = new Sitter(timed(two, { keepTimes: false }));
  sitter.answer('12', 1000, 2000).shown(2017).left(3000).returned(4000).answer('56', 4017, 60_000);
  const sat = sitter.sat();
  expect(sat).toMatchObject({ endedMs: null, away: [{ why: 'hidden', fromMs: null, toMs: null }] });
  for (const visit of sat.visits) {
    expect(visit).toMatchObject({ onsetMs: null, endMs: null });
    expect(visit).not.toHaveProperty('late');
    for (const [, atMs] of visit.keys) expect(atMs).toBeNull();
  }
  expect(sat.visits[0]?.keys).toEqual([['1', null, 'keys']]);
  expect(sat.visits.map(({ afterBell }) => afterBell ?? false)).toEqual([false, false, true]);
});

test('times are held until the sealing: the bell is judged by them', () => {
  const sitter = new Sitter(timed(two, { keepTimes: false })).answer('8', 1000, 46_000.001);
  expect(sitter.sat().visits[0]).toMatchObject({ afterBell: true, endMs: null });
});
