import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import type { Household } from '../../../src/core/household/household';
import type { HouseholdRecord } from '../../../src/core/record/household-record';
import type { Draft } from '../../../src/core/record/record';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { recordVersion } from '../../../src/core/record/stamp';
import { anyLog, children, jumbled, stamped, story } from './made-records';

/** A household as plain data, with its answers for every id there could be. */
function spelledOut(household: Household, records: readonly HouseholdRecord[]) {
  const ids = [...new Set(records.flatMap((r) => ('target' in r ? [r.id, r.target] : [r.id])))].sort();
  const { rulingsOn, isUndone, undoneBy, childOf, ...plain } = household;
  return {
    ...plain,
    answers: ids.map((id) => [id, rulingsOn(id), undoneBy(id)]),
    undone: records
      .filter(isUndone)
      .map(({ id }) => id)
      .sort(),
    owners: [...new Map(records.map((r) => [r.id, childOf(r)]))].sort(),
  };
}

function told(...drafts: readonly Draft[]): Household {
  return foldHousehold(story(...drafts) as HouseholdRecord[]);
}

const ann: Draft = { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 1 };
const bo: Draft = { kind: 'childAdded', child: 'bo', name: 'Bo', edge: 2 };
const undo = (target: string): Draft => ({ kind: 'undone', target });

describe('order and duplicates', () => {
  test('do not matter', () => {
    const cases = anyLog.chain(({ home }) => fc.record({ home: fc.constant(home), jumbled: jumbled(home) }));
    fc.assert(
      fc.property(cases, (c) => {
        expect(spelledOut(foldHousehold(c.jumbled), c.home)).toEqual(
          spelledOut(foldHousehold(c.home), c.home),
        );
      }),
    );
  });

  test('arriving in two parts and folded again gives the same', () => {
    fc.assert(
      fc.property(anyLog, fc.nat(), ({ home }, cut) => {
        const at = home.length === 0 ? 0 : cut % home.length;
        const merged = [...home.slice(at), ...home.slice(0, at), ...home.slice(0, at)];
        expect(spelledOut(foldHousehold(merged), home)).toEqual(spelledOut(foldHousehold(home), home));
      }),
    );
  });

  test('of two devices with the same counter the later device, then the later id, holds', () => {
    const changed = (device: string, id: string, name: string): HouseholdRecord => ({
      ...stamped(5, { device, id }),
      kind: 'childChanged',
      child: 'ann',
      name,
    });
    const added = { ...stamped(1), ...ann } as HouseholdRecord;
    const byDevice = foldHousehold([added, changed('b', 'x', 'second'), changed('a', 'y', 'first')]);
    expect(byDevice.children[0]?.name).toBe('second');
    const byId = foldHousehold([added, changed('a', 'y', 'second'), changed('a', 'x', 'first')]);
    expect(byId.children[0]?.name).toBe('second');
  });

  test('of two records with one id, which only a fault can make, the later holds in any order', () => {
    const added = { ...stamped(1), ...ann } as HouseholdRecord;
    const early: HouseholdRecord = {
      ...stamped(2, { id: 'x' }),
      kind: 'childChanged',
      child: 'ann',
      name: 'Old',
    };
    const late: HouseholdRecord = {
      ...stamped(3, { id: 'x' }),
      kind: 'childChanged',
      child: 'ann',
      name: 'New',
    };
    for (const records of [
      [added, early, late],
      [late, added, early],
    ])
      expect(foldHousehold(records).children[0]?.name).toBe('New');
  });

  test('a tablet that believes it is 2031 does not beat every later save', () => {
    const future = { at: Date.UTC(2031, 0) };
    const early = { ...stamped(2, future), kind: 'childChanged', child: 'ann', name: 'Old' } as const;
    const late = { ...stamped(3), kind: 'childChanged', child: 'ann', name: 'New' } as const;
    expect(foldHousehold([{ ...stamped(1), ...ann } as HouseholdRecord, late, early]).children[0]?.name).toBe(
      'New',
    );
  });
});

describe('a child', () => {
  test('begins with the defaults', () => {
    expect(told(ann).children).toEqual([
      {
        id: 'ann',
        name: 'Ann',
        edge: 1,
        archived: false,
        currentSet: null,
        keptSets: [],
        ticked: new Set(),
        settings: defaultChildSettings,
        trial: null,
        spread: null,
        spoken: [],
        remarks: [],
      },
    ]);
  });

  test('has the spread asked for last, until a set is started; taking that back brings the spread back', () => {
    const asked = { kind: 'spreadAsked', child: 'ann', ops: ['add', 'sub'] } as const;
    const start = { kind: 'setStarted', child: 'ann', set: 'doubles' } as const;
    const spreadOf = (...more: readonly Draft[]) => told(ann, ...more).children[0]?.spread;
    expect(spreadOf()).toBeNull();
    expect(spreadOf(asked)).toEqual({ id: 'r2', ops: ['add', 'sub'] });
    expect(spreadOf(start, asked)).toMatchObject({ id: 'r3' });
    expect(spreadOf(asked, start)).toBeNull();
    expect(spreadOf(asked, start, { kind: 'undone', target: 'r3' })).toMatchObject({ id: 'r2' });
    expect(spreadOf(asked, { kind: 'undone', target: 'r2' })).toBeNull();
    expect(spreadOf(asked, { ...asked, ops: ['mul'] })).toEqual({ id: 'r3', ops: ['mul'] });
  });

  test('has the trial drawn last, until it is stopped or another set is started', () => {
    const order = ['thread', 'noClock'] as const;
    const drawn = { kind: 'trialDrawn', child: 'ann', set: 'doubles', plan: 'eight', order } as const;
    const start = { kind: 'setStarted', child: 'ann', set: 'doubles' } as const;
    const trialOf = (...more: readonly Draft[]) => told(ann, start, drawn, ...more).children[0]?.trial;
    expect(trialOf()).toEqual({ id: 'r3', set: 'doubles', plan: 'eight', order, isStopped: false });
    expect(trialOf({ kind: 'trialStopped', child: 'ann', trial: 'r3' })).toMatchObject({ isStopped: true });
    expect(trialOf({ kind: 'trialStopped', child: 'ann', trial: 'r1' })).toMatchObject({ isStopped: false });
    expect(trialOf({ ...start, set: 'times-2' })).toMatchObject({ isStopped: true });
    expect(trialOf(start)).toMatchObject({ isStopped: false });
    expect(trialOf({ kind: 'undone', target: 'r3' })).toBeNull();
    expect(trialOf({ kind: 'trialStopped', child: 'ann', trial: 'r3' }, drawn)).toMatchObject({
      id: 'r5',
      isStopped: false,
    });
  });

  test('takes each changed field from the latest record that names it', () => {
    const household = told(
      ann,
      { kind: 'childChanged', child: 'ann', name: 'Anna', archived: true },
      { kind: 'childChanged', child: 'ann', edge: 4 },
      { kind: 'childSettingsChanged', child: 'ann', changes: { length: 10, timed: true } },
      { kind: 'childSettingsChanged', child: 'ann', changes: { timed: false } },
    );
    expect(household.children[0]).toMatchObject({ name: 'Anna', edge: 4, archived: true });
    expect(household.children[0]?.settings).toEqual({ ...defaultChildSettings, length: 10, timed: false });
  });

  test('waits for its first record: changes that came before it apply then', () => {
    const early: HouseholdRecord = { ...stamped(9), kind: 'childChanged', child: 'ann', name: 'Anna' };
    expect(foldHousehold([early]).children).toEqual([]);
    expect(foldHousehold([early, { ...stamped(1), ...ann } as HouseholdRecord]).children[0]?.name).toBe(
      'Anna',
    );
  });

  test('keeps the sets moved on from, and never counts the current one among them', () => {
    const moved: readonly Draft[] = [
      ann,
      { kind: 'setStarted', child: 'ann', set: 'doubles' },
      { kind: 'setKept', child: 'ann', set: 'doubles', kept: true },
      { kind: 'setStarted', child: 'ann', set: 'times-5' },
    ];
    expect(told(...moved).children[0]).toMatchObject({ currentSet: 'times-5', keptSets: ['doubles'] });
    const back: Draft = { kind: 'setStarted', child: 'ann', set: 'doubles' };
    expect(told(...moved, back).children[0]).toMatchObject({ currentSet: 'doubles', keptSets: [] });
    const letGo: Draft = { kind: 'setKept', child: 'ann', set: 'doubles', kept: false };
    expect(told(...moved, letGo).children[0]?.keptSets).toEqual([]);
  });

  test('has the facts ticked and not unticked since', () => {
    const household = told(
      ann,
      { kind: 'factsTicked', child: 'ann', facts: ['mul-2-3', 'mul-2-4'], known: true },
      { kind: 'factsTicked', child: 'ann', facts: ['mul-2-3'], known: false },
    );
    expect(household.children[0]?.ticked).toEqual(new Set(['mul-2-4']));
  });

  test('stands in the order of being added, whatever is changed later', () => {
    const household = told(bo, ann, { kind: 'childChanged', child: 'bo', name: 'Zed' });
    expect(household.children.map(({ id }) => id)).toEqual(['bo', 'ann']);
  });
});

describe("a parent's own set", () => {
  const made: Draft = { kind: 'setMade', set: 'own', name: 'Hard ones', facts: ['mul-7-8'] };

  test('is what its latest record says', () => {
    const household = told(made, {
      kind: 'setMade',
      set: 'own',
      name: 'Hard',
      facts: ['mul-7-8', 'mul-6-7'],
    });
    expect(household.ownSets).toEqual([{ id: 'own', name: 'Hard', facts: ['mul-7-8', 'mul-6-7'] }]);
  });

  test('once removed is no child’s current or kept set, and is still known by name', () => {
    const household = told(
      ann,
      made,
      { kind: 'setStarted', child: 'ann', set: 'own' },
      { kind: 'setKept', child: 'ann', set: 'own', kept: true },
      { kind: 'setMade', set: 'own', name: 'Hard ones', facts: ['mul-7-8'], removed: true },
    );
    expect(household.ownSets).toEqual([]);
    expect(household.removedSets.map(({ name }) => name)).toEqual(['Hard ones']);
    expect(household.children[0]).toMatchObject({ currentSet: null, keptSets: [] });
  });

  test('comes back whole when its removal is undone', () => {
    const household = told(
      ann,
      made,
      { kind: 'setStarted', child: 'ann', set: 'own' },
      { kind: 'setMade', set: 'own', name: 'Hard ones', facts: [], removed: true },
      undo('r4'),
    );
    expect(household.ownSets[0]?.facts).toEqual(['mul-7-8']);
    expect(household.children[0]?.currentSet).toBe('own');
  });
});

test("the household's settings are the latest of each", () => {
  const household = told(
    { kind: 'householdSettingsChanged', changes: { sounds: false } },
    { kind: 'householdSettingsChanged', changes: { keySound: true } },
  );
  expect(household.settings).toMatchObject({ sounds: false, keySound: true, bandNames: { firm: 'Firm' } });
});

describe('tombstones', () => {
  test('win over every record of the child, whenever it arrives', () => {
    const cases = anyLog.chain(({ home }) => {
      const dead: HouseholdRecord = { ...stamped(1, { id: 'dead' }), kind: 'childDeleted', child: 'ann' };
      return fc.record({ home: fc.constant(home), whole: jumbled([...home, dead]) });
    });
    fc.assert(
      fc.property(cases, ({ home, whole }) => {
        const { childOf } = foldHousehold(home);
        const without = home.filter((record) => childOf(record) !== 'ann' && record.kind !== 'childDeleted');
        const dead = foldHousehold(whole);
        expect(dead.children.some(({ id }) => id === 'ann')).toBe(false);
        expect(dead.rulings.some(({ record }) => childOf(record) === 'ann')).toBe(false);
        if (home.some(({ kind }) => kind === 'childDeleted')) return;
        expect(dead.children).toEqual(foldHousehold(without).children);
      }),
    );
  });

  test('are permanent: undoing one has no effect', () => {
    const household = told(ann, { kind: 'childDeleted', child: 'ann' }, undo('r2'));
    expect(household.children).toEqual([]);
    expect(household.tombstones).toEqual(new Set(['ann']));
  });

  test('leave the rulings on a sitting that had been given to another child', () => {
    const moved: Draft = {
      kind: 'ruled',
      child: 'ann',
      target: 's1',
      targetDay: '2026-03-02',
      ruling: { what: 'wrongChild', child: 'bo' },
    };
    const household = told(ann, bo, moved, { kind: 'childDeleted', child: 'ann' });
    expect(household.rulings).toHaveLength(1);
    expect(household.moves).toEqual([{ target: 's1', from: 'ann', day: '2026-03-02', to: 'bo' }]);
  });
});

describe('records of a later version', () => {
  const later = {
    ...stamped(2, { v: recordVersion + 1 }),
    kind: 'childChanged',
    child: 'ann',
    name: 'Later',
  };
  const foreign = { ...stamped(3), kind: 'moonPhaseNoted', child: 'ann' };

  test('are left out and counted, each once', () => {
    const household = foldHousehold([{ ...stamped(1), ...ann }, later, foreign, later] as HouseholdRecord[]);
    expect(household.children[0]?.name).toBe('Ann');
    expect(household.later).toBe(2);
  });

  test('of a known version and kind there are none', () => {
    fc.assert(fc.property(anyLog, ({ home }) => foldHousehold(home).later === 0));
  });
});

test('every child in the fold was added and is not deleted', () => {
  fc.assert(
    fc.property(anyLog, ({ home }) => {
      const household = foldHousehold(home);
      for (const { id } of household.children) {
        expect(children).toContain(id);
        expect(household.tombstones.has(id)).toBe(false);
        expect(home.some((r) => r.kind === 'childAdded' && r.child === id && !household.isUndone(r))).toBe(
          true,
        );
      }
    }),
  );
});
