import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { rowsFor } from '../../core/marking/rows';
import type { Ruling } from '../../core/record/household-record';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { findChild } from '../children/name-of';
import type { Entry } from './book-of';
import { ruledDraft } from './rule';
import { markingWords } from './words';

export interface WholeRulingsProps {
  readonly desk: Desk;
  readonly entry: Entry;
  readonly acting: Acting;
}

const rowChoices: readonly number[] = [0, 1, 2];

/** Rulings on a sitting as a whole; each shows only where it would change something. */
export function WholeRulings({ desk, entry, acting }: WholeRulingsProps) {
  const { sat, marked, rulings } = entry;
  const rule = (ruling: Ruling) => acting.act(() => desk.record([ruledDraft(sat, ruling)]));
  return (
    <section class="no-print">
      <h2>{markingWords.whole}</h2>
      <div class="actions">
        {!rulings.voided && (
          <button type="button" onClick={() => rule({ what: 'void' })}>
            {markingWords.void}
          </button>
        )}
        {!rulings.notOwnWork && (
          <button type="button" onClick={() => rule({ what: 'notOwnWork' })}>
            {markingWords.notOwnWork}
          </button>
        )}
        {marked.noBand === 'interrupted' && (
          <button type="button" onClick={() => rule({ what: 'bandAnyway' })}>
            {markingWords.bandAnyway}
          </button>
        )}
      </div>
      <OtherChild desk={desk} entry={entry} onMove={(child) => rule({ what: 'wrongChild', child })} />
      {sat.purpose === 'sheet' && <Rows desk={desk} entry={entry} rule={rule} />}
    </section>
  );
}

interface RowsProps {
  readonly desk: Desk;
  readonly entry: Entry;
  readonly rule: (ruling: Ruling) => void;
}

function Rows({ desk, entry, rule }: RowsProps) {
  const { marked, rulings, child } = entry;
  const settings = findChild(desk.household.value, child)?.settings;
  const name = marked.band && desk.household.value.settings.bandNames[marked.band];
  const proposed = settings ? rowsFor(marked.band, settings.rows) : 0;
  return (
    <>
      <h3>{markingWords.rows}</h3>
      <p>
        {rulings.rows === null
          ? markingWords.rowsProposed(proposed, name)
          : markingWords.rowsAre(rulings.rows)}
      </p>
      <div class="actions">
        {rowChoices
          .filter((rows) => rows !== rulings.rows)
          .map((rows) => (
            <button key={rows} type="button" onClick={() => rule({ what: 'rows', rows })}>
              {markingWords.sendRows(rows)}
            </button>
          ))}
      </div>
    </>
  );
}

interface OtherChildProps {
  readonly desk: Desk;
  readonly entry: Entry;
  readonly onMove: (child: string) => void;
}

function OtherChild({ desk, entry, onMove }: OtherChildProps) {
  const id = useId();
  const chosen = useSignal('');
  const others = desk.household.value.children.filter((child) => child.id !== entry.child);
  if (others.length === 0) return null;
  return (
    <div class="field">
      <label for={id}>{markingWords.wrongChild}</label>
      <span class="field-line">
        <select
          id={id}
          value={chosen}
          onChange={(event) => {
            chosen.value = event.currentTarget.value;
          }}
        >
          <option value="">{markingWords.chooseChild}</option>
          {others.map((child) => (
            <option key={child.id} value={child.id}>
              {child.name}
            </option>
          ))}
        </select>
        <button
          type="button"
          aria-disabled={chosen.value === ''}
          onClick={() => chosen.value && onMove(chosen.value)}
        >
          {markingWords.move}
        </button>
      </span>
    </div>
  );
}
