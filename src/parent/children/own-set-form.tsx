import { signal, useSignal } from '@preact/signals';
import type { FactId } from '../../core/fact/fact';
import type { OwnSet } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';
import { checkOwnSet } from '../../core/set/own-set';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { draft, dropDraft } from '../drafts';
import { FactPicker } from '../fact-grid/fact-picker';
import { pickWords } from '../fact-grid/words';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { childrenWords, ownSetFaults } from './words';

/** What is picked so far, by set; outside the page like every draft. */
const picks = signal<ReadonlyMap<Id, ReadonlySet<FactId>>>(new Map());

export interface OwnSetFormProps {
  readonly desk: Desk;
  readonly id: Id;
  readonly before: OwnSet | null;
  readonly onDone: () => void;
}

/** A set of the parent's own, picked on the grid. */
export function OwnSetForm({ desk, id, before, onDone }: OwnSetFormProps) {
  const nameDraft = `own-set-name-${id}`;
  const name = draft(nameDraft, before?.name ?? '');
  const faults = useSignal<readonly string[]>([]);
  const { act, isBusy, trouble } = useActing();
  const picked = picks.value.get(id) ?? new Set(before?.facts);

  function mark(facts: readonly FactId[], isMarked: boolean) {
    const next = new Set(picked);
    for (const fact of facts) isMarked ? next.add(fact) : next.delete(fact);
    picks.value = new Map(picks.value).set(id, next);
  }

  function leave() {
    dropDraft(nameDraft);
    const rest = new Map(picks.value);
    rest.delete(id);
    picks.value = rest;
    onDone();
  }

  async function keep(event: Event) {
    event.preventDefault();
    const facts = [...picked];
    faults.value = checkOwnSet(name.value, facts).map((fault) => ownSetFaults[fault]);
    if (faults.value.length > 0) return;
    if (await act(() => desk.record([{ kind: 'setMade', set: id, name: name.value.trim(), facts }]))) leave();
  }

  return (
    <form class="card" onSubmit={keep} noValidate>
      <h3>{before ? childrenWords.editOwn : childrenWords.makeOwn}</h3>
      <Field label={childrenWords.ownName} value={name} wide />
      <FactPicker marked={picked} words={pickWords} onMark={mark} />
      <p>{childrenWords.picked(picked.size)}</p>
      <div class="said" role="status">
        {faults.value.map((fault) => (
          <p key={fault}>{fault}</p>
        ))}
      </div>
      <Trouble sentence={trouble} />
      <div class="actions">
        <button type="submit" class="main" aria-disabled={isBusy.value}>
          {childrenWords.keepOwn}
        </button>
        <button type="button" class="quiet" onClick={leave}>
          {childrenWords.cancel}
        </button>
      </div>
    </form>
  );
}
