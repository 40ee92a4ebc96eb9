import { activeTimes } from '../../../core/marking/active-time';
import type { Day } from '../../../core/record/stamp';
import type { Entry } from '../../marking/book-of';

/** A span of days, both ends included. */
export interface Span {
  readonly from: Day;
  readonly to: Day;
}

/** What was done in a span. Answers are those of sheets, extra rows and look-backs. */
export interface Work {
  readonly days: number;
  /** Active minutes at the cards; of days whose times were kept. */
  readonly minutes: number;
  readonly sheets: number;
  readonly answers: number;
  readonly right: number;
}

/** A child's term: the whole of it, each month (`2026-11`), and three sheets as samples. */
export interface Term {
  readonly whole: Work;
  readonly months: readonly { readonly month: string; readonly work: Work }[];
  readonly samples: readonly Entry[];
}

/** Reads a child's sittings of a span; voided ones and another's work are left out. */
export function readTerm(entries: readonly Entry[], { from, to }: Span): Term {
  const own = entries.filter(
    ({ sat, rulings }) => sat.day >= from && sat.day <= to && !rulings.voided && !rulings.notOwnWork,
  );
  const months = [...new Set(own.map(({ sat }) => monthOf(sat.day)))].sort();
  return {
    whole: workOf(own),
    months: months.map((month) => ({
      month,
      work: workOf(own.filter(({ sat }) => monthOf(sat.day) === month)),
    })),
    samples: samplesOf(own),
  };
}

function monthOf(day: Day): string {
  return day.slice(0, 7);
}

function workOf(entries: readonly Entry[]): Work {
  const sheets = entries.filter(({ sat }) => sat.purpose === 'sheet');
  const asked = entries.filter(({ sat }) => sat.purpose === 'sheet' || sat.purpose === 'row');
  const ms = entries.reduce((sum, { sat }) => sum + (activeTimes(sat).at(-1) ?? 0), 0);
  return {
    days: new Set(entries.map(({ sat }) => sat.day)).size,
    minutes: Math.round(ms / 60_000),
    sheets: sheets.length,
    answers: asked.reduce((sum, { marked }) => sum + marked.right + marked.wrong, 0),
    right: asked.reduce((sum, { marked }) => sum + marked.right, 0),
  };
}

/** The first sheet of the span, one from its middle, and the last. */
function samplesOf(entries: readonly Entry[]): readonly Entry[] {
  const sheets = entries
    .filter(({ sat }) => sat.purpose === 'sheet' && sat.ended === 'finished')
    .toSorted((x, y) => (x.sat.day < y.sat.day ? -1 : 1));
  const places = new Set([0, Math.floor((sheets.length - 1) / 2), sheets.length - 1]);
  return [...places].flatMap((place) => sheets[place] ?? []);
}
