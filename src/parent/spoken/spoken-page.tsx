import { useSignal } from '@preact/signals';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { FactId } from '../../core/fact/fact';
import { parseFact } from '../../core/fact/fact';
import { writtenFact, writtenWhole } from '../../core/fact/written';
import type { Child } from '../../core/household/household';
import type { SpokenFact } from '../../core/look-back/spoken-check';
import type { SpokenAnswer } from '../../core/record/household-record';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { chosenChild } from '../children/child-tabs';
import { draft, dropDraft } from '../drafts';
import { Choice } from '../parts/choice';
import { Done } from '../parts/done';
import { Heading } from '../parts/heading';
import { Opened } from '../parts/opened';
import { Trouble } from '../parts/trouble';
import { turnTo } from '../place';
import { sentence } from '../words';
import './spoken.css';
import { cameNames, reasonText, spokenWords } from './words';

/** A few facts to read aloud, and how each came. */
export function SpokenPage({ desk }: { readonly desk: Desk }) {
  const child = chosenChild(desk.household.value);
  if (!child) return null;
  return <SpokenOf key={child.id} desk={desk} child={child} />;
}

const answers: readonly SpokenAnswer[] = ['right', 'helped', 'notYet'];

function SpokenOf({ desk, child }: { readonly desk: Desk; readonly child: Child }) {
  const acting = useActing();
  const said = useSignal<string | null>(null);
  const needs = desk.days.value.get(child.id)?.needs ?? [];
  const need = needs.find(({ what }) => what === 'spokenCheck');
  const facts = need?.what === 'spokenCheck' ? need.facts : [];
  const markOf = (fact: FactId) => draft(`spoken-${child.id}-${fact}`);
  const page = useRef<HTMLDivElement>(null);
  const done = acting.done.value;
  // The form goes with what it kept: the focus stays with its Undo.
  useLayoutEffect(() => {
    if (done) page.current?.querySelector<HTMLElement>('.kept')?.focus();
  }, [done]);
  const left = facts.filter(({ fact }) => markOf(fact).value === '').length;

  async function keep(event: Event) {
    event.preventDefault();
    said.value = left > 0 ? sentence(spokenWords.unmarked(left)) : null;
    if (left > 0) return;
    const heard = facts.flatMap(({ fact }) => {
      const came = answers.find((answer) => answer === markOf(fact).value);
      return came ? [{ fact, came }] : [];
    });
    const day = desk.today.value;
    const record = { kind: 'spokenChecked', child: child.id, day, answers: heard } as const;
    if (await acting.record(desk, [record], spokenWords.kept)) {
      for (const { fact } of heard) dropDraft(`spoken-${child.id}-${fact}`);
    }
  }

  return (
    <div ref={page}>
      <div class="actions no-print">
        <button type="button" class="quiet" onClick={() => turnTo('today')}>
          {spokenWords.back}
        </button>
      </div>
      <Heading>{spokenWords.title(child.name)}</Heading>
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      {facts.length === 0 ? (
        <Held child={child} today={desk.today.value} />
      ) : (
        <form class="spoken" onSubmit={keep} noValidate>
          <p>{spokenWords.lead}</p>
          {facts.map((one) => (
            <Asked key={one.fact} {...one} mark={markOf(one.fact)} />
          ))}
          <Opened title={spokenWords.answers}>
            {() => (
              <p>
                {facts
                  .flatMap(({ fact }) => parseFact(fact) ?? [])
                  .map(writtenWhole)
                  .join(', ')}
              </p>
            )}
          </Opened>
          <p class={said.value ? 'said' : 'kept'} role="status">
            {said}
          </p>
          <div class="actions">
            <button type="submit" class="main" aria-disabled={acting.isBusy.value}>
              {spokenWords.keep}
            </button>
          </div>
        </form>
      )}
    </div>
  );
}

interface AskedProps extends SpokenFact {
  readonly mark: ReturnType<typeof draft>;
}

function Asked({ fact: id, reason, mark }: AskedProps) {
  const fact = parseFact(id);
  const options = useMemo(() => answers.map((value) => ({ value, label: cameNames[value] })), []);
  if (!fact) return null;
  const written = writtenFact(fact);
  return (
    <section class="card spoken-fact" aria-label={written}>
      <p class="aloud">{written}</p>
      <p class="hint">{reasonText(reason)}</p>
      <Choice
        legend={spokenWords.marked(written)}
        options={options}
        value={answers.find((answer) => answer === mark.value) ?? null}
        onChoose={(came) => {
          mark.value = came;
        }}
        inRow
      />
    </section>
  );
}

/** What was heard today, or that nothing waits. */
function Held({ child, today }: { readonly child: Child; readonly today: string }) {
  const held = child.spoken.findLast(({ day }) => day === today);
  if (!held) return <p>{spokenWords.none}</p>;
  return (
    <>
      <h2>{spokenWords.heldToday}</h2>
      <ul>
        {held.answers.map(({ fact: id, came }) => {
          const fact = parseFact(id);
          return fact && <li key={id}>{`${writtenFact(fact)}: ${cameNames[came]}`}</li>;
        })}
      </ul>
    </>
  );
}
