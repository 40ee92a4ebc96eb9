import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { beginChild } from '../setup/new-child';
import { setupStep } from '../setup/progress';
import { AskSpread } from '../spread/ask-spread';
import { ChildAway } from './child-away';
import { ChildTabs, chosenChild } from './child-tabs';
import { CurrentSet } from './current-set';
import { KeptSets } from './kept-sets';
import { KnownFacts } from './known-facts';
import { NameAndEdge } from './name-and-edge';
import { OwnSets } from './own-sets';
import { SetOrder } from './set-order';
import { childrenWords } from './words';

/** Each child's name, sets and known facts; the parent's own sets. */
export function ChildrenPage({ desk }: { readonly desk: Desk }) {
  const { children } = desk.household.value;
  const child = chosenChild(desk.household.value);

  function add() {
    beginChild(children.length, true);
    setupStep.value = { at: 'child' };
  }

  return (
    <>
      <Heading>{childrenWords.title}</Heading>
      <ChildTabs desk={desk} page="children" />
      <div class="actions no-print">
        <button type="button" onClick={add}>
          {childrenWords.add}
        </button>
      </div>
      {child && (
        <section key={child.id} aria-label={child.name}>
          <h2>{child.name}</h2>
          <CurrentSet desk={desk} child={child} />
          <KeptSets desk={desk} child={child} />
          <KnownFacts desk={desk} child={child} />
          <AskSpread desk={desk} child={child} />
          <SetOrder desk={desk} child={child} />
          <NameAndEdge desk={desk} child={child} />
          <ChildAway desk={desk} child={child} />
        </section>
      )}
      <OwnSets desk={desk} />
    </>
  );
}
