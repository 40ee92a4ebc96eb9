import { describe, expect, test } from 'vitest';
import { type PromptId, parsePrompt } from '../../../src/core/fact/prompt';
import type { MarkedPlace, Outcome } from '../../../src/core/marking/marked';
import { readSpread } from '../../../src/core/spread/read-spread';
import { spreadFacts, spreadGroups } from '../../../src/core/spread/spread-facts';

const asked = [...spreadFacts(['add'], 0, 3), ...spreadFacts(['add'], 1, 3)];

function place(prompt: PromptId, outcome: Outcome, firstKeyMs: number | null): MarkedPlace {
  return {
    place: 0,
    prompt,
    answer: parsePrompt(prompt)?.answer ?? 0,
    given: outcome === 'right' ? `${parsePrompt(prompt)?.answer}` : null,
    outcome,
    byBell: false,
    firstKeyMs,
    tookMs: firstKeyMs,
    atMs: null,
    shown: false,
    accepted: false,
    slip: null,
  };
}

/** Every fact right and quick but for those of some groups. */
function read(
  except: readonly string[] = [],
  outcome: Outcome = 'wrong',
  ms: number | null = 900,
  order: readonly string[] = [],
) {
  const weak = new Set<string>(
    spreadGroups(['add'])
      .filter(({ id }) => except.includes(id))
      .flatMap(({ facts }) => facts),
  );
  const places = asked.map((id) => place(id, weak.has(id) ? outcome : 'right', weak.has(id) ? ms : 900));
  return readSpread(['add'], places, 400, order);
}

describe('what a spread proposes', () => {
  test('keeps the groups that were all right and quick, and begins with the first other one', () => {
    const { kept, current } = read(['past-ten']);
    expect(current?.id).not.toBeUndefined();
    expect(kept.map(({ id }) => id)).toContain('plus-0-and-1');
    expect(kept.map(({ id }) => id)).not.toContain('past-ten');
    expect(kept).not.toContain(current);
  });

  test('ticks the facts of the groups kept, each once', () => {
    const { kept, known } = read(['past-ten']);
    expect(new Set(known)).toEqual(new Set(kept.flatMap(({ facts }) => facts)));
    expect(new Set(known).size).toBe(known.length);
  });

  test('has nothing to begin with when all is known', () => {
    const { kept, current } = read();
    expect(current).toBeNull();
    expect(kept).toEqual(spreadGroups(['add']));
  });

  test('one wrong answer, and one skipped, is enough not to call a group known', () => {
    for (const outcome of ['wrong', 'skipped'] as const) {
      const [first] = asked.filter((id) => spreadGroups(['add'])[0]?.facts.includes(id as never));
      const places = asked.map((id) => place(id, id === first ? outcome : 'right', 900));
      expect(readSpread(['add'], places, 0, []).current?.id).toBe('plus-0-and-1');
    }
  });

  test('right but slow is not known: think time is the first key less the hand time, under about 3 s', () => {
    expect(read(['doubles'], 'right', 3500).groups.find(({ set }) => set.id === 'doubles')?.isKnown).toBe(
      false,
    );
    expect(read(['doubles'], 'right', 3300).groups.find(({ set }) => set.id === 'doubles')?.isKnown).toBe(
      true,
    );
  });

  test('without times all right is enough', () => {
    const places = asked.map((id) => place(id, 'right', null));
    expect(readSpread(['add'], places, 0, []).current).toBeNull();
  });

  test('places not reached say nothing, and a group nobody was asked of is not known', () => {
    const places = asked.map((id) => place(id, 'notReached', null));
    const { kept, current } = readSpread(['add'], places, 0, []);
    expect(kept).toEqual([]);
    expect(current?.id).toBe('plus-0-and-1');
  });

  test('begins by the parent’s own order of sets', () => {
    const weak = ['doubles', 'past-ten'];
    const order = ['past-ten', 'doubles'];
    const usual = read(weak)
      .groups.filter(({ isKnown }) => !isKnown)
      .map(({ set }) => set.id);
    const own = read(weak, 'wrong', 900, order)
      .groups.filter(({ isKnown }) => !isKnown)
      .map(({ set }) => set.id);
    expect(usual.indexOf('doubles')).toBeLessThan(usual.indexOf('past-ten'));
    expect(own.indexOf('past-ten')).toBeLessThan(own.indexOf('doubles'));
  });

  test('counts an answer for every group that holds its fact', () => {
    const { groups } = readSpread(['add'], [place('add-2-9', 'right', 900)], 0, []);
    const seen = groups.filter(({ asked: many }) => many > 0).map(({ set }) => set.id);
    expect(seen).toEqual(['plus-2', 'plus-9']);
  });
});
