import { useSignal } from '@preact/signals';
import type { Marked } from '../../core/marking/marked';
import type { Ruling } from '../../core/record/household-record';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { Tick } from '../parts/tick';
import { secondsText } from '../parts/when';
import type { Cause } from '../reading/causes';
import type { Entry } from './book-of';
import { causeText, looksLikeSlip } from './cause-words';
import { keysOf } from './keys-of';
import { OutcomeMark } from './outcome-mark';
import { ruledDraft } from './rule';
import { markingWords, outcomeText, promptText } from './words';

export interface AnswerTableProps {
  readonly desk: Desk;
  readonly entry: Entry;
  readonly acting: Acting;
  readonly title: string;
  /** What each wrong answer looks like, by its place. */
  readonly causes: ReadonlyMap<number, Cause> | null;
}

/** A sitting answer by answer, with its times, its keys on request, and a ruling beside each wrong answer. */
export function AnswerTable({ desk, entry, acting, title, causes }: AnswerTableProps) {
  const { sat, marked } = entry;
  const hasKeys = useSignal(false);
  const { columns } = markingWords;
  const rule = (ruling: Ruling) => acting.act(() => desk.record([ruledDraft(sat, ruling)]));
  const rulings = desk.household.value.rulings.filter(({ record }) => record.target === sat.id);

  /** Takes back what was ruled last on a place, where anything is in force. */
  function undoOf(at: number): (() => void) | null {
    const last = rulings.findLast(
      ({ active, record: { ruling } }) => active && 'place' in ruling && ruling.place === at,
    );
    return last ? () => void acting.act(() => desk.undo(last.record.id)) : null;
  }
  return (
    <section>
      <h2>{title}</h2>
      <p class="hint">{timesNote(sat)}</p>
      <div class="no-print">
        <Tick
          label={markingWords.keys}
          isOn={hasKeys.value}
          onTurn={(isOn) => {
            hasKeys.value = isOn;
          }}
        />
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard */}
      <section class="table-frame" tabIndex={0} aria-label={title}>
        <table class="plain stacks answers">
          <thead>
            <tr>
              <th scope="col">{columns.place}</th>
              <th scope="col">{columns.fact}</th>
              <th scope="col">{columns.given}</th>
              <th scope="col">{columns.outcome}</th>
              <th scope="col">{columns.firstKey}</th>
              <th scope="col">{columns.taken}</th>
            </tr>
          </thead>
          <tbody>
            {marked.places.map((place) => (
              <tr key={place.place} data-holds=".undo">
                <td data-label={columns.place}>{place.place + 1}</td>
                <th scope="row">{promptText(place.prompt)}</th>
                <td data-label={columns.given}>{place.given ?? '–'}</td>
                <td class="wraps" data-label={columns.outcome}>
                  <OutcomeMark place={place} /> {outcomeText(place, sat.clock !== null)}
                  <PlaceCause place={place} cause={causes?.get(place.place) ?? null} />
                  <PlaceRulings place={place} rule={rule} onUndo={undoOf(place.place)} />
                  {hasKeys.value && <p class="hint">{keysOf(sat, place.place)}</p>}
                </td>
                <td data-label={columns.firstKey}>{timeText(place.firstKeyMs)}</td>
                <td data-label={columns.taken}>{timeText(place.tookMs)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}

interface PlaceCauseProps {
  readonly place: Marked['places'][number];
  readonly cause: Cause | null;
}

/** What a wrong answer looks like; a slip is proposed as a slip, the ruling is the parent's. */
function PlaceCause({ place, cause }: PlaceCauseProps) {
  if (place.outcome !== 'wrong' || !cause) return null;
  const text = causeText(cause.error.fact, place.given, cause.read);
  const isProposed = place.slip === null && looksLikeSlip(cause.read);
  return <p class="hint cause">{isProposed ? markingWords.perhapsSlip(text) : markingWords.cause(text)}</p>;
}

interface PlaceRulingsProps {
  readonly place: Marked['places'][number];
  readonly rule: (ruling: Ruling) => void;
  readonly onUndo: (() => void) | null;
}

function PlaceRulings({ place, rule, onUndo }: PlaceRulingsProps) {
  const at = place.place;
  const isWrong = place.outcome === 'wrong';
  if (!isWrong && !onUndo) return null;
  const fact = `${at + 1}, ${promptText(place.prompt)}`;
  return (
    <span class="place-rulings no-print">
      {isWrong && (
        <button
          type="button"
          class="link"
          aria-label={`${markingWords.accept}: ${fact}`}
          onClick={() => rule({ what: 'accept', place: at })}
        >
          {markingWords.accept}
        </button>
      )}
      {isWrong && place.slip !== true && (
        <button
          type="button"
          class="link"
          aria-label={`${markingWords.slip}: ${fact}`}
          onClick={() => rule({ what: 'slip', place: at, slip: true })}
        >
          {markingWords.slip}
        </button>
      )}
      {isWrong && place.slip !== false && (
        <button
          type="button"
          class="link"
          aria-label={`${markingWords.miscalculation}: ${fact}`}
          onClick={() => rule({ what: 'slip', place: at, slip: false })}
        >
          {markingWords.miscalculation}
        </button>
      )}
      {onUndo && (
        <button type="button" class="link undo" aria-label={`${markingWords.undo}: ${fact}`} onClick={onUndo}>
          {markingWords.undo}
        </button>
      )}
    </span>
  );
}

function timesNote({ paper, keepTimes }: Entry['sat']): string {
  if (paper) return markingWords.onPaper;
  return keepTimes ? markingWords.timesNote : markingWords.noTimes;
}

function timeText(ms: number | null): string {
  return ms === null ? '–' : secondsText(ms);
}
