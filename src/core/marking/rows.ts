import { type FactId, parseFact } from '../fact/fact';
import type { ChildSettings } from '../record/settings';
import type { Band } from './band';
import type { Marked, MarkedPlace } from './marked';

/** Facts in a row. */
export const rowLength = 5;

const mostMoreRows = 2;

/** What comes after the rows done so far: one more, enough, or a word to the parent. */
export type NextRow = { readonly facts: readonly FactId[] } | { readonly stop: 'enough' | 'tellParent' };

/** How many extra rows a band brings; none without a band. */
export function rowsFor(band: Band | null, rows: ChildSettings['rows']): number {
  return band ? rows[band] : 0;
}

/**
 * The next extra row of a sheet (common practice, no source). Rows that were sent are filled with missed or skipped,
 * not reached, slowest; what a row has asked already comes last. Where two running each have 3 or fewer of 5 right,
 * what is not yet right today follows, at most two rows more. No fact comes twice in one row.
 */
export function nextRow(sheet: Marked, rowsDone: readonly Marked[], rowsSent: number): NextRow {
  const places = asOfNow(sheet, rowsDone);
  if (rowsDone.length < rowsSent) return row(places) ?? enough;
  const [last, before] = [rowsDone.at(-1), rowsDone.at(-2)];
  if (rowsSent === 0 || !last || !before || !isWeak(last) || !isWeak(before)) return enough;
  if (rowsDone.length - rowsSent >= mostMoreRows) return { stop: 'tellParent' };
  return row(places.filter(({ outcome }) => outcome !== 'right')) ?? enough;
}

const enough = { stop: 'enough' } as const;

function isWeak({ right, places }: Marked): boolean {
  return right * 5 <= places.length * 3;
}

interface Candidate extends MarkedPlace {
  readonly isAsked: boolean;
}

/** The sheet's places with what rows have made of their facts since, in the order in which they fill a row. */
function asOfNow(sheet: Marked, rowsDone: readonly Marked[]): readonly Candidate[] {
  const since = new Map(
    rowsDone.flatMap(({ places }) => places.map((place) => [place.prompt, place] as const)),
  );
  return sheet.places
    .map((place): Candidate => {
      const asked = since.get(place.prompt);
      return { ...place, outcome: asked?.outcome ?? place.outcome, isAsked: asked !== undefined };
    })
    .toSorted(
      (x, y) =>
        Number(x.isAsked) - Number(y.isAsked) ||
        urgency(x) - urgency(y) ||
        slowness(y) - slowness(x) ||
        x.place - y.place,
    );
}

function urgency({ outcome }: MarkedPlace): number {
  switch (outcome) {
    case 'wrong':
    case 'skipped':
      return 0;
    case 'unfinished':
    case 'notReached':
      return 1;
    case 'right':
      return 2;
  }
}

/** Only right answers are ordered by their time; the others keep the order of the sheet. */
function slowness({ outcome, tookMs }: MarkedPlace): number {
  return outcome === 'right' ? (tookMs ?? 0) : 0;
}

function row(places: readonly MarkedPlace[]): { readonly facts: readonly FactId[] } | null {
  const facts = new Set(places.flatMap(({ prompt }) => parseFact(prompt)?.id ?? []));
  return facts.size === 0 ? null : { facts: [...facts].slice(0, rowLength) };
}
