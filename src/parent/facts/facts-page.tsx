import type { FactId, Operation } from '../../core/fact/fact';
import { knownFact, pairOf } from '../../core/fact/fact-list';
import type { FactReading } from '../../readings/facts/fact-reading';
import { sentenceOfFacts } from '../../readings/sentences/of-facts';
import { say } from '../../readings/sentences/say';
import type { Said as SaidText } from '../../readings/sentences/sentence';
import type { Desk } from '../../state/desk';
import { ChildTabs, chosenChild } from '../children/child-tabs';
import { operationNames } from '../fact-grid/words';
import { Heading } from '../parts/heading';
import { Said } from '../parts/said';
import { place, turnTo } from '../place';
import { type ChildReading, childReading } from '../reading/child-reading';
import { saidOfFacts, saidOfReadiness } from '../reading/said';
import { useRead } from '../reading/use-read';
import { insideWords } from '../words';
import { FactHistory } from './fact-history';
import { FactTable } from './fact-table';
import { StateGrid } from './state-grid';
import { StateKey } from './state-key';
import { factsWords } from './words';

/** How well each fact is known: sentences, a grid for each operation, and the same as a table. */
export function FactsPage({ desk }: { readonly desk: Desk }) {
  const child = chosenChild(desk.household.value);
  return (
    <>
      <Heading>{child ? `${factsWords.title}: ${child.name}` : factsWords.title}</Heading>
      <ChildTabs desk={desk} page="facts" />
      {child && <FactsOf key={child.id} desk={desk} childId={child.id} />}
    </>
  );
}

function FactsOf({ desk, childId }: { readonly desk: Desk; readonly childId: string }) {
  const household = desk.household.value;
  const history = desk.history.value;
  const read = useRead(
    function* () {
      const child = household.children.find(({ id }) => id === childId);
      if (!history || !child) return null;
      const reading = childReading(household, history, child);
      yield* reading.prepare('readiness', 'clockEffect', 'trial');
      return {
        reading,
        groups: groupsOf(reading),
        total: saidOfFacts(reading),
        said: saidOfReadiness(reading),
      };
    },
    [household, history, childId],
  );
  if (!read) return <p role="status">{insideWords.historyLoading}</p>;
  if (read.groups.length === 0) return <p>{factsWords.nobody}</p>;
  return (
    <>
      <Said {...read.total} />
      {read.said.map((said) => (
        <Said key={said.text} {...said} />
      ))}
      <p class="hint no-print">{factsWords.lead}</p>
      <StateKey readings={read.groups.flatMap(({ readings }) => readings)} />
      {read.groups.map((group) => (
        <OperationFacts key={group.op} desk={desk} reading={read.reading} {...group} />
      ))}
    </>
  );
}

interface Group {
  readonly op: Operation;
  readonly readings: readonly FactReading[];
  readonly said: SaidText;
}

interface OperationFactsProps extends Group {
  readonly desk: Desk;
  readonly reading: ChildReading;
}

function OperationFacts({ desk, op, readings, said, reading }: OperationFactsProps) {
  const fact = knownFact(place.value.fact ?? '');
  const opened = fact?.op === op ? fact : null;
  const open = (id: FactId | null) => turnTo('facts', { fact: id });
  function close() {
    const from = opened?.id;
    open(null);
    document.querySelector<HTMLElement>(`.state-grid [data-fact="${from}"]`)?.focus();
  }
  const isLarge = readings.some((one) => pairOf(one.fact).some((part) => part > 9));
  return (
    <section aria-label={operationNames[op]}>
      <h2>{operationNames[op]}</h2>
      <Said {...said} />
      {(['tie', 'zeroOrOne'] as const).map((kind) => (
        <CountedApart key={kind} kind={kind} readings={readings} />
      ))}
      <StateGrid
        op={op}
        reach={isLarge ? 12 : 9}
        facts={reading.facts}
        opened={opened?.id ?? null}
        onOpen={(id) => open(id === opened?.id ? null : id)}
      />
      {opened && <FactHistory key={opened.id} desk={desk} reading={reading} fact={opened} onClose={close} />}
      <FactTable op={op} readings={readings} />
    </section>
  );
}

interface CountedApartProps {
  readonly kind: NonNullable<FactReading['apart']>;
  readonly readings: readonly FactReading[];
}

function CountedApart({ kind, readings }: CountedApartProps) {
  const own = readings.filter(({ apart }) => apart === kind);
  if (own.length === 0) return null;
  const quick = own.filter(({ state }) => state === 'quick').length;
  return <p>{factsWords.countedApart(kind, quick, own.length)}</p>;
}

const operations: readonly Operation[] = ['add', 'sub', 'mul', 'div'];

/** The operations that have been met, that of the current set first; facts by rising pair. */
function groupsOf({ facts, log, child }: ChildReading): readonly Group[] {
  const [inSet] = log.current?.facts ?? [];
  const current = inSet ? knownFact(inSet)?.op : undefined;
  const order = operations.toSorted((x, y) => Number(y === current) - Number(x === current));
  return order.flatMap((op) => {
    const readings = [...facts.values()].filter(({ fact }) => fact.op === op).sort(byPair);
    const plain = readings.filter(({ apart }) => apart === null);
    const said = say(sentenceOfFacts(plain), child.name);
    return readings.length === 0 ? [] : [{ op, readings, said }];
  });
}

function byPair({ fact: one }: FactReading, { fact: other }: FactReading): number {
  const [x, y] = [pairOf(one), pairOf(other)];
  return x[0] - y[0] || x[1] - y[1];
}
