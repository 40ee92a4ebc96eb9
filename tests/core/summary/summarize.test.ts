import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { effectiveHistory, noHistory, type RuledSat } from '../../../src/core/household/history';
import { markSat } from '../../../src/core/marking/mark-sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import type { Day } from '../../../src/core/record/stamp';
import { resumeSummary, summarize } from '../../../src/core/summary/summarize';
import { emptySummary } from '../../../src/core/summary/summary';
import { anyLog, children, days, jumbled, satOf } from '../household/made-records';

function sittingsOf(log: MadeLog, child: string) {
  const { children: all } = effectiveHistory(log.history, foldHousehold(log.home));
  return (all.get(child) ?? noHistory).sittings;
}

type MadeLog = typeof anyLog extends fc.Arbitrary<infer L> ? L : never;

describe('a summary from a checkpoint and its tail', () => {
  test('equals the summary of everything, wherever the cut between two sittings', () => {
    fc.assert(
      fc.property(anyLog, fc.nat(), (log, cut) => {
        for (const child of children) {
          const all = sittingsOf(log, child);
          const at = cut % (all.length + 1);
          // Through a structured clone, as storage would give it back.
          const checkpoint = structuredClone(summarize(all.slice(0, at)));
          expect(resumeSummary(checkpoint, all.slice(at))).toEqual(summarize(all));
        }
      }),
    );
  });

  test('equals it when the checkpoint was made of the records before a day, in any order of arrival', () => {
    const cases = anyLog.chain((log) =>
      fc.record({ log: fc.constant(log), history: jumbled(log.history), day: fc.constantFrom(...days) }),
    );
    fc.assert(
      fc.property(cases, ({ log, history, day }) => {
        for (const child of children) {
          const part = (keep: (d: Day) => boolean) =>
            sittingsOf({ ...log, history: history.filter((r) => keep(r.day)) }, child);
          const checkpoint = summarize(part((d) => d < day));
          expect(
            resumeSummary(
              checkpoint,
              part((d) => d >= day),
            ),
          ).toEqual(summarize(sittingsOf(log, child)));
        }
      }),
    );
  });
});

test('the summary of a history agrees with counting it by hand', () => {
  fc.assert(
    fc.property(anyLog, (log) => {
      for (const child of children) {
        const sittings = sittingsOf(log, child);
        const counted = sittings.filter(({ rulings }) => !rulings.voided);
        const sheets = counted.filter(({ sat }) => sat.purpose === 'sheet');
        const finished = sheets.filter(({ sat }) => sat.ended === 'finished' || sat.ended === 'bell');
        const summary = summarize(sittings);
        // Of each day the first finished one counts, as a look-back or as another sheet.
        const ofDays = new Map(finished.toReversed().map(({ sat }) => [sat.day, sat.lookBack === true]));
        const lookBacks = [...ofDays.values()].filter(Boolean).length;
        expect(summary.finished).toBe(ofDays.size - lookBacks);
        expect(summary.lookBacks.finished).toBe(lookBacks);
        const lastLookBack = [...ofDays].filter(([, isLookBack]) => isLookBack).map(([day]) => day);
        const after = [...ofDays.keys()].filter((day) => day > (lastLookBack.toSorted().at(-1) ?? ''));
        expect(summary.lookBacks.since).toBe(after.length);
        expect(summary.lastSheet).toBe(sheets.at(-1)?.sat.day ?? null);
        for (const [fact, { seen, rightDays, firstRight, lastRight }] of summary.facts) {
          const answers = counted.flatMap((ruled) => answersTo(fact, ruled));
          expect(seen).toBe(answers.length);
          const shown = daysShownFirst(fact, counted);
          const firsts = new Map(answers.toReversed().map(({ day, right }) => [day, right]));
          const rightOn = [...firsts]
            .flatMap(([day, right]) => (right && !shown.has(day) ? [day] : []))
            .toSorted();
          expect(rightDays).toBe(rightOn.length);
          expect(firstRight).toBe(rightOn[0] ?? null);
          expect(lastRight).toEqual(rightOn.slice(-4));
        }
      }
    }),
  );
});

/** The days on which a card round showed a fact before it was first asked. */
function daysShownFirst(fact: FactId, sittings: readonly RuledSat[]): ReadonlySet<Day> {
  const asked = new Set<Day>();
  const shown = new Set<Day>();
  for (const ruled of sittings) {
    const { day, prompts, visits, shownFirst = [], purpose } = ruled.sat;
    if (answersTo(fact, ruled).length > 0) asked.add(day);
    if (purpose !== 'cards' || ruled.rulings.notOwnWork || asked.has(day)) continue;
    if (shownFirst.some((place) => prompts[place] === fact && visits.some((one) => one.place === place)))
      shown.add(day);
  }
  return shown;
}

function answersTo(fact: FactId, { sat, rulings }: RuledSat): { day: Day; right: boolean }[] {
  if (rulings.notOwnWork || !['sheet', 'row', 'firstTry'].includes(sat.purpose)) return [];
  return markSat(sat, rulings, defaultChildSettings.limits)
    .places.filter(
      ({ prompt, outcome }) => prompt === fact && ['right', 'wrong', 'skipped'].includes(outcome),
    )
    .map(({ outcome }) => ({ day: sat.day, right: outcome === 'right' }));
}

test('nothing sat sums up to nothing', () => {
  expect(summarize([])).toEqual(emptySummary);
});

test('an answer the parent accepts counts as right', () => {
  const sat = satOf('ann', '2026-03-02', 1, [['mul-2-3', '5']]);
  const ruling = {
    kind: 'ruled',
    child: 'ann',
    target: sat.id,
    targetDay: sat.day,
    ruling: { what: 'accept', place: 0 },
  };
  const stamp = { id: 'q', v: 1, seq: 2, device: 'tablet', at: 0 };
  const home = [{ ...stamp, ...ruling }] as MadeLog['home'];
  expect(summarize(sittingsOf({ home: [], history: [sat] }, 'ann')).untimed).toEqual([['mul-2-3', false]]);
  expect(summarize(sittingsOf({ home, history: [sat] }, 'ann')).untimed).toEqual([['mul-2-3', true]]);
});
