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
          const { answers, shown } = answersTo(fact, counted);
          expect(seen).toBe(answers.length);
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

interface Answer {
  readonly day: Day;
  readonly right: boolean;
}

/** A child's own answers to a fact, of a card round the day's first one; and the days it was shown before any. */
function answersTo(
  fact: FactId,
  sittings: readonly RuledSat[],
): { readonly answers: readonly Answer[]; readonly shown: ReadonlySet<Day> } {
  const answers: Answer[] = [];
  const shown = new Set<Day>();
  for (const { sat, rulings } of sittings) {
    if (rulings.notOwnWork) continue;
    const { day, purpose, shownFirst = [] } = sat;
    const places = markSat(sat, rulings, defaultChildSettings.limits).places.filter(
      ({ prompt, outcome }) => prompt === fact && outcome !== 'notReached',
    );
    const own = places.filter(({ outcome }) => outcome !== 'unfinished');
    if (['sheet', 'row', 'firstTry'].includes(purpose))
      answers.push(...own.map(({ outcome }) => ({ day, right: outcome === 'right' })));
    if (purpose !== 'cards') continue;
    const isFresh = !shown.has(day) && !answers.some((one) => one.day === day);
    const first = places.find(({ place, outcome }) => shownFirst.includes(place) || outcome !== 'unfinished');
    if (!first || !isFresh) continue;
    if (shownFirst.includes(first.place)) shown.add(day);
    else answers.push({ day, right: first.outcome === 'right' && !first.shown });
  }
  return { answers, shown };
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
