import type { Household } from '../../../core/household/household';
import type { MarkedPlace } from '../../../core/marking/marked';
import type { Sat } from '../../../core/record/sat';
import { nameOf } from '../../children/name-of';
import { setName } from '../../children/set-list';
import type { Entry } from '../../marking/book-of';
import { promptText, sittingName } from '../../marking/words';
import { isoTime } from './iso-time';

/** A cell as it is before it is text; `null` for nothing. */
export type Cell = string | number | null;

type Columns<T> = Readonly<Record<string, (of: T, household: Household) => Cell>>;

const yes = (is: boolean): Cell => (is ? 'yes' : 'no');
const seconds = (ms: number | null): Cell => (ms === null ? null : Math.round(ms) / 1000);

function begun({ keepTimes, startedAt, offsetMin }: Sat): Cell {
  return keepTimes ? isoTime(startedAt, offsetMin) : null;
}

/** What every line begins with. */
const whose: Columns<Entry> = {
  sitting: ({ sat }) => sat.id,
  child: ({ child }, household) => nameOf(household, child),
  day: ({ sat }) => sat.day,
  begun: ({ sat }) => begun(sat),
};

/** One line a sitting: the name of each column and what stands in it. */
export const sittingColumns: Columns<Entry> = {
  ...whose,
  what: ({ sat }) => sittingName(sat),
  belongs_to: ({ sat }) => sat.of,
  set: ({ sat }, household) => (sat.set === null ? null : setName(household, sat.set)),
  allowed_s: ({ sat }) => (sat.clock ? sat.clock.allowanceMs / 1000 : null),
  asked: ({ marked }) => marked.places.length,
  right: ({ marked }) => marked.right,
  wrong: ({ marked }) => marked.wrong,
  skipped: ({ marked }) => marked.skipped,
  not_reached: ({ marked }) => marked.notReached,
  right_by_the_bell: ({ sat, marked }) => (sat.clock ? marked.rightByBell : null),
  band: ({ marked }, { settings }) => (marked.band ? settings.bandNames[marked.band] : null),
  took_s: ({ sat }) => seconds(sat.endedMs),
  ended: ({ sat }) => sat.ended,
  interrupted: ({ marked }) => yes(marked.interrupted),
  second_on_the_day: ({ sat }) => yes(sat.second === true),
  voided: ({ rulings }) => yes(rulings.voided),
  own_work: ({ rulings }) => yes(!rulings.notOwnWork),
};

/** An answer with the sitting it is of. */
export interface AnswerLine {
  readonly entry: Entry;
  readonly place: MarkedPlace;
}

const ofEntry = Object.fromEntries(
  Object.entries(whose).map(([name, cell]) => [
    name,
    ({ entry }: AnswerLine, household: Household) => cell(entry, household),
  ]),
);

/** One line an answer. */
export const answerColumns: Columns<AnswerLine> = {
  ...ofEntry,
  what: ({ entry }) => sittingName(entry.sat),
  number: ({ place }) => place.place + 1,
  asked: ({ place }) => promptText(place.prompt),
  prompt: ({ place }) => place.prompt,
  answer: ({ place }) => place.answer,
  given: ({ place }) => place.given,
  outcome: ({ place }) => place.outcome,
  by_the_bell: ({ entry, place }) => (entry.sat.clock ? yes(place.byBell) : null),
  first_key_s: ({ place }) => seconds(place.firstKeyMs),
  took_s: ({ place }) => seconds(place.tookMs),
  accepted: ({ place }) => yes(place.accepted),
  slip: ({ place }) => (place.slip === null ? null : yes(place.slip)),
  fact_shown: ({ place }) => yes(place.shown),
};

/** A line of one table. */
export function lineOf<T>(columns: Columns<T>, of: T, household: Household): readonly Cell[] {
  return Object.values(columns).map((cell) => cell(of, household));
}
