import { describe, expect, test } from 'vitest';
import { parseFact } from '../../src/core/fact/fact';
import { factClass } from '../../src/core/fact/fact-class';
import { knownFact } from '../../src/core/fact/fact-list';
import { familyOf } from '../../src/core/fact/family';
import { isUntried } from '../../src/core/first-try/to-teach';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, noHistory } from '../../src/core/household/history';
import { markSat } from '../../src/core/marking/mark-sat';
import { noRulings } from '../../src/core/marking/sat-rulings';
import { daysBetween } from '../../src/core/memory/memory-strength';
import { planDay } from '../../src/core/plan/plan-day';
import { weekday } from '../../src/core/plan/school-day';
import type { LogRecord } from '../../src/core/record/record';
import type { Sat } from '../../src/core/record/sat';
import { defaultChildSettings } from '../../src/core/record/settings';
import { setById } from '../../src/core/set/teaching-sets';
import { makeDice } from '../../src/core/sheet/dice';
import { isAccurate, isNew } from '../../src/core/summary/accuracy';
import { summarize } from '../../src/core/summary/summarize';
import type { CrewMember } from '../../src/demo/crew';
import { teo } from '../../src/demo/teo';
import { dayFacts } from '../../src/state/day-facts';
import { isHistory, isHome } from '../demo/a-boat';
import { brokenOffOn, changed, crew, sitTerm, type TermDay, timeOf } from './a-term';

const term = sitTerm(1);
/** The same children where the parent gives them very little time. */
const tight = sitTerm(2, {
  Wren: { minutes: 1 },
  Teo: { minutes: 1.5, lookBackEvery: 0 },
  Juniper: { minutes: 1.1, gapLines: false },
});
const names = (member: CrewMember) => member.name;
const daysOf = (member: CrewMember) => term.days.get(member) ?? [];
const sheetOf = ({ taken }: TermDay) => taken.find(({ step }) => step.what === 'sheet') ?? null;
const places = (sat: Sat) => markSat(sat, noRulings, defaultChildSettings.limits).places;

test('the same term comes from the same seed, and another from another', () => {
  expect(sitTerm(1).records).toEqual(term.records);
  expect(tight.records).not.toEqual(term.records);
});

describe.each(crew.map((member) => [names(member), member] as const))('%s’s term', (_, member) => {
  const days = daysOf(member);
  const worked = days.filter(({ taken }) => taken.length > 0);

  test('holds every kind of step', () => {
    const whats = new Set(worked.flatMap(({ taken }) => taken.map(({ step }) => step.what)));
    for (const what of ['practice', 'firstTry', 'cards', 'sheet', 'mending', 'twin', 'lines'] as const)
      expect(whats).toContain(what);
    expect(worked.some((day) => sheetOf(day)?.sat.lookBack)).toBe(true);
  });

  test('asks for nothing on a weekend, and offers a sheet to a child who wants one', () => {
    const free = days.filter(({ day }) => weekday(day) > 5);
    expect(free.length).toBeGreaterThan(15);
    for (const { opened, taken } of free) {
      expect(opened.steps).toEqual([]);
      expect(opened.isFree).toBe(true);
      expect(opened.again?.purpose).toBe('sheet');
      expect(taken).toEqual([]);
    }
  });

  test('comes to its end each day, with its piece', () => {
    for (const { ended } of worked) {
      expect(ended.isDone).toBe(true);
      expect(ended.steps).toEqual([{ what: 'piece' }]);
      expect(ended.sheets).toHaveLength(1);
    }
  });

  test('has no day over its minutes by more than one card, with time enough or too little', () => {
    const short = (tight.days.get(member) ?? []).filter(({ taken }) => taken.length > 0);
    for (const day of [...worked, ...short]) {
      const { ms, longestCardMs } = timeOf(day);
      expect(ms).toBeLessThanOrEqual(day.settings.minutes * 60_000 + longestCardMs);
    }
    // Where time is short it is used: the minutes are what ends such a day.
    const isUsed = (day: TermDay) => timeOf(day).ms > 0.8 * day.settings.minutes * 60_000;
    expect(short.filter(isUsed).length).toBeGreaterThan(short.length / 4);
  });

  test('tries each set before anything of it is taught', () => {
    const ticked = new Set(member.ticked);
    for (const { opened, taken, before } of worked) {
      const fresh = taken.flatMap(({ step }) => (step.what === 'cards' ? step.fresh : []));
      const tried = new Set(taken.flatMap(({ sat }) => (sat.purpose === 'firstTry' ? sat.prompts : [])));
      for (const fact of fresh)
        expect(tried.has(fact) || !isUntried(fact, { facts: before.facts, ticked })).toBe(true);
      const first = opened.steps.findIndex(({ what }) => what === 'firstTry');
      const cards = opened.steps.findIndex(({ what }) => what === 'cards');
      if (first >= 0 && cards >= 0) expect(first).toBeLessThan(cards);
    }
  });

  test('tries a set once: what was answered is not tried again', () => {
    const tried = worked.flatMap(({ taken }) =>
      taken.flatMap(({ sat }) => (sat.purpose === 'firstTry' ? sat.prompts : [])),
    );
    expect(new Set(tried).size).toBe(tried.length);
  });

  test('has cards once a day, required only while something of a new set is to be taught', () => {
    for (const { taken, nth } of worked) {
      const cards = taken.filter(({ step }) => step.what === 'cards');
      const isChange = member === changed.member && nth === changed.on;
      expect(cards.length).toBeLessThanOrEqual(isChange ? 2 : 1);
      for (const { step } of cards)
        if (step.what === 'cards' && !step.isChoice) expect(step.fresh.length).toBeGreaterThan(0);
    }
  });

  test('has a look-back in place of every fifth finished sheet, as soon as there is something to look back on', () => {
    let since = 0;
    for (const day of worked) {
      const sheet = sheetOf(day);
      if (!sheet) continue;
      const isDue = since >= 4 && dayHasKept(day);
      expect(sheet.sat.lookBack ?? false).toBe(isDue);
      if (isDue) {
        expect(sheet.sat.clock).toBeNull();
        expect(day.taken.some(({ step }) => step.what === 'cards')).toBe(false);
      }
      if (sheet.sat.ended === 'finished' || sheet.sat.ended === 'bell') since = isDue ? 0 : since + 1;
    }
  });

  test('has a spoken check with every tenth finished sheet, look-backs counted, of two to five facts', () => {
    let since = 0;
    let held = 0;
    for (const day of worked) {
      const ended = sheetOf(day)?.sat.ended;
      if (ended === 'finished' || ended === 'bell') since += 1;
      const need = day.ended.needs.find(({ what }) => what === 'spokenCheck');
      expect(need !== undefined).toBe(since === 10);
      if (need?.what !== 'spokenCheck') continue;
      expect(need.facts.length).toBeGreaterThanOrEqual(2);
      expect(need.facts.length).toBeLessThanOrEqual(5);
      held += 1;
      since = 0;
    }
    expect(held).toBeGreaterThanOrEqual(4);
  });

  test('has as many extra rows as the band of its sheet brings, and no more than two besides', () => {
    for (const day of worked) {
      const sheet = day.ended.sheets[0];
      const rows = day.taken.filter(({ step }) => step.what === 'row').length;
      const sent = sheet?.marked.band ? day.settings.rows[sheet.marked.band] : 0;
      expect(rows).toBeGreaterThanOrEqual(sent);
      expect(rows).toBeLessThanOrEqual(sent === 2 ? 4 : sent);
    }
  });

  test('mends every miss and follows every miscalculation by its twin on the same day', () => {
    for (const { ended, taken } of worked) {
      expect(ended.sheets.flatMap(({ toMend }) => toMend)).toEqual([]);
      const sats = taken.map(({ sat }) => sat);
      const wrong = sats
        .filter(({ purpose }) => purpose === 'sheet' || purpose === 'row')
        .flatMap((sat) => places(sat).filter(({ outcome }) => outcome === 'wrong'))
        .map(({ prompt }) => prompt);
      expect(new Set(sats.flatMap(({ twinOf }) => twinOf ?? []))).toEqual(new Set(wrong));
      for (const { twinOf = [], prompts } of sats)
        for (const [place, of] of twinOf.entries()) {
          const [fact, twin] = [knownFact(of), knownFact(prompts[place] ?? '')];
          if (!fact || !twin) throw new Error('no fact');
          expect(twin.op).toBe(fact.op);
          expect(factClass(twin)).toBe(factClass(fact));
          expect(familyOf(fact).map(({ id }) => id)).not.toContain(twin.id);
        }
    }
  });

  test('measures the hands in two parts on the first day, then about monthly', () => {
    const copied = worked.flatMap(({ day, taken }) =>
      taken.filter(({ sat }) => sat.purpose === 'practice' && sat.prompts.length === 13).map(() => day),
    );
    const [first, second, ...others] = copied;
    expect(second).toBe(first);
    expect(others.length).toBeGreaterThanOrEqual(2);
    let last = second ?? '';
    for (const day of others) {
      expect(daysBetween(last, day)).toBeGreaterThanOrEqual(28);
      expect(daysBetween(last, day)).toBeLessThanOrEqual(42);
      last = day;
    }
  });

  test('goes on after a sheet broken off as on any day', () => {
    const [broken, next] = [
      days[brokenOffOn],
      days.slice(brokenOffOn + 1).find(({ taken }) => taken.length > 0),
    ];
    expect(broken && sheetOf(broken)?.sat.ended).toBe('stopped');
    expect(next && sheetOf(next)?.sat.prompts.length).toBe(next?.settings.length);
  });

  test('heaps nothing up after a holiday or an illness', () => {
    for (const [index, day] of worked.entries()) {
      const gap = daysBetween(worked[index - 1]?.day ?? day.day, day.day);
      if (gap <= 3) continue;
      expect(day.opened.steps.map(({ what }) => what)).not.toContain('mending');
      expect(day.opened.steps.filter(({ what }) => what === 'sheet')).toHaveLength(1);
      expect(sheetOf(day)?.sat.prompts.length).toBe(day.settings.length);
    }
  });

  test('starves no fact of the current set, and drowns the child in none', () => {
    const lately = new Map<string, number>();
    let sheets = 0;
    for (const day of worked) {
      const sat = sheetOf(day)?.sat;
      if (!sat || sat.lookBack || sat.set !== day.set || day.moved) continue;
      sheets += 1;
      const facts = factsOf(day.set, member);
      const own = sat.prompts.filter((prompt) => facts.includes(prompt));
      const [least, most] = [Math.floor(own.length / facts.length), Math.ceil(own.length / facts.length)];
      for (const fact of facts) {
        const times = own.filter((prompt) => prompt === fact).length;
        expect(times).toBeLessThanOrEqual(most);
        expect(times).toBeGreaterThanOrEqual(least);
        if (isAsked(day, fact)) lately.set(fact, sheets);
        // As often as the others: however long the set, its turn comes.
        expect(sheets - (lately.get(fact) ?? sheets - 1)).toBeLessThanOrEqual(
          2 * Math.ceil(facts.length / own.length) + 1,
        );
      }
    }
  });

  function isAsked({ taken }: TermDay, fact: string): boolean {
    return taken.some(
      ({ sat }) => sat.purpose !== 'mending' && sat.prompts.some((prompt) => prompt === fact),
    );
  }

  test('asks every kept fact again within seven weeks, on a sheet or a card', () => {
    const asked = new Map<string, number>();
    for (const { sat } of worked.slice(-35).flatMap(({ taken }) => taken))
      if (sat.purpose === 'sheet' || sat.purpose === 'cards')
        for (const prompt of sat.prompts) asked.set(prompt, (asked.get(prompt) ?? 0) + 1);
    const household = foldHousehold(term.records.filter(isHome));
    const kept = dayFacts(household, member.id).kept.filter((fact) => parseFact(fact));
    const starved = kept.filter((fact) => !asked.has(fact) && !movedLately(fact));
    expect(kept.length).toBeGreaterThan(10);
    expect(starved).toEqual([]);

    function movedLately(fact: string): boolean {
      return worked.slice(-35).some((day) => day.moved && factsOf(day.set, member).includes(fact));
    }
  });

  test('has moves proposed only for an accurate set that is not new, after a week of it at least', () => {
    let begun = worked[0]?.day ?? '';
    for (const day of worked) {
      if (!day.moved) continue;
      const facts = new Set(parsed(factsOf(day.set, member)));
      const after = summaryAt(term.records, member, day.day);
      expect(isAccurate(after, facts)).toBe(true);
      expect(isNew(after, facts)).toBe(false);
      expect(daysBetween(begun, day.day)).toBeGreaterThanOrEqual(4);
      begun = day.day;
    }
  });

  test('has a move proposed within four weeks of the first day, and again: an accurate child is not kept waiting', () => {
    const moves = worked.filter(({ moved }) => moved);
    expect(moves.length).toBeGreaterThanOrEqual(2);
    expect(daysBetween(worked[0]?.day ?? '', moves[0]?.day ?? '')).toBeLessThanOrEqual(28);
  });
});

test('the careless move on as well: what goes wrong in a hurry, with the clock, is not held against a set', () => {
  const days = daysOf(teo);
  const sheets = days.flatMap((day) => sheetOf(day)?.sat ?? []);
  const shareRight = (isTimed: boolean) => {
    const all = sheets
      .filter(({ clock }) => (clock !== null) === isTimed)
      .flatMap((sat) => places(sat).filter(({ outcome }) => outcome !== 'notReached'));
    return all.filter(({ outcome }) => outcome === 'right').length / all.length;
  };
  expect(shareRight(false) - shareRight(true)).toBeGreaterThan(0.1);
  expect(days.filter(({ moved }) => moved).length).toBeGreaterThanOrEqual(2);
});

test('a set changed in the middle of the morning is tried at once, before its sheet', () => {
  const day = daysOf(changed.member)[changed.on];
  const whats = day?.taken.map(({ step, sat }) => `${step.what} ${sat.set}`) ?? [];
  const from = daysOf(changed.member)[changed.on - 1]?.set;
  expect(from).not.toBe(changed.to);
  expect(whats.slice(0, 2)).toEqual([`cards ${from}`, `firstTry ${changed.to}`]);
  expect(whats).toContain(`sheet ${changed.to}`);
});

test('where time is short the mending that waited begins the next day, and the parent is told', () => {
  const days = crew.flatMap((member) => tight.days.get(member) ?? []);
  const waited = days.filter(({ ended }) => ended.needs.some(({ what }) => what === 'waited'));
  expect(waited.length).toBeGreaterThan(0);
  expect(days.some(({ taken }) => taken.some(({ sat }) => sat.ended === 'enough'))).toBe(true);
  for (const member of crew) {
    const worked = (tight.days.get(member) ?? []).filter(({ taken }) => taken.length > 0);
    for (const [index, day] of worked.entries()) {
      const left = day.ended.sheets.at(-1)?.toMend.length ?? 0;
      const next = worked[index + 1];
      if (left === 0 || !next || daysBetween(day.day, next.day) > 7) continue;
      expect(next.opened.steps.find(({ what }) => what !== 'practice')?.what).toBe('mending');
    }
  }
});

test('a day is planned the same whatever the order its records came in', () => {
  const dice = makeDice(7);
  for (const [index, member] of crew.entries())
    for (const nth of [2, 23 + index, 44, 67]) {
      const day = daysOf(member)[nth]?.day ?? '';
      const records = term.records.filter(({ at }) => at < Date.parse(`${day}T10:00:00Z`));
      expect(planned(dice.shuffled(records), member, day)).toEqual(planned(records, member, day));
    }
});

function planned(records: readonly LogRecord[], member: CrewMember, today: string) {
  const household = foldHousehold(records.filter(isHome));
  const { sittings, changes } =
    effectiveHistory(records.filter(isHistory), household).children.get(member.id) ?? noHistory;
  const facts = dayFacts(household, member.id);
  const summary = summarize(sittings);
  return planDay({ child: member.id, today, ...facts, change: changes.get(today) ?? {}, sittings, summary });
}

function summaryAt(records: readonly LogRecord[], member: CrewMember, day: string) {
  const household = foldHousehold(records.filter(isHome));
  const { sittings } =
    effectiveHistory(records.filter(isHistory), household).children.get(member.id) ?? noHistory;
  return summarize(sittings.filter(({ sat }) => sat.day <= day));
}

function factsOf(set: string, member: CrewMember): readonly string[] {
  return setById(set)?.facts ?? member.ownSets.find(({ id }) => id === set)?.facts ?? [];
}

function parsed(facts: readonly string[]) {
  return facts.flatMap((fact) => parseFact(fact)?.id ?? []);
}

function dayHasKept({ keptBefore }: TermDay): boolean {
  return keptBefore > 0;
}
