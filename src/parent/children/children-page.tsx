import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { AddChild } from './add-child';
import { ChildAway } from './child-away';
import { ChildTabs, chosenChild } from './child-tabs';
import { CurrentSet } from './current-set';
import { KeptSets } from './kept-sets';
import { KnownFacts } from './known-facts';
import { NameAndEdge } from './name-and-edge';
import { OwnSets } from './own-sets';
import { childrenWords } from './words';

/** Each child's name, sets and known facts; the parent's own sets. */
export function ChildrenPage({ desk }: { readonly desk: Desk }) {
  const isAdding = useSignal(false);
  const said = useSignal<string | null>(null);
  const child = chosenChild(desk.household.value);

  function doneAdding(name: string | null) {
    isAdding.value = false;
    said.value = name && childrenWords.added(name);
  }

  return (
    <>
      <Heading>{childrenWords.title}</Heading>
      <ChildTabs desk={desk} page="children" />
      <p class="said" role="status">
        {said}
      </p>
      {isAdding.value ? (
        <AddChild desk={desk} onDone={doneAdding} />
      ) : (
        <div class="actions no-print">
          <button
            type="button"
            onClick={() => {
              isAdding.value = true;
            }}
          >
            {childrenWords.add}
          </button>
        </div>
      )}
      {child && (
        <section key={child.id} aria-label={child.name}>
          <h2>{child.name}</h2>
          <CurrentSet desk={desk} child={child} />
          <KeptSets desk={desk} child={child} />
          <KnownFacts desk={desk} child={child} />
          <NameAndEdge desk={desk} child={child} />
          <ChildAway desk={desk} child={child} />
        </section>
      )}
      <OwnSets desk={desk} />
    </>
  );
}
