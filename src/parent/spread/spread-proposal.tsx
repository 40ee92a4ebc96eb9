import type { Child } from '../../core/household/household';
import { markSat } from '../../core/marking/mark-sat';
import type { Draft } from '../../core/record/record';
import { readSpread, type SpreadReading } from '../../core/spread/read-spread';
import { handTimes } from '../../readings/hand-time/hand-time';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { Said } from '../parts/said';
import { turnTo } from '../place';
import { useRead } from '../reading/use-read';
import { proposalHow, proposalText, spreadWords } from './words';

export interface SpreadProposalProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly acting: Acting;
}

/** What the two days of a spread propose, done in one tap and taken back in another. */
export function SpreadProposal({ desk, child, acting }: SpreadProposalProps) {
  const history = desk.history.value;
  const { spread, settings } = child;
  const read = useRead(() => {
    if (!spread || !history) return null;
    const sittings = history.children.get(child.id)?.sittings ?? [];
    const sat = sittings.filter(
      (one) => one.sat.spread?.spread === spread.id && !one.rulings.voided && !one.rulings.notOwnWork,
    );
    const places = sat.flatMap((one) => markSat(one.sat, one.rulings, settings.limits).places);
    // A handful of copied numbers is little: of several ways of entry the fastest is taken, which calls less quick.
    const hands = handTimes(sittings.map((one) => one.sat)).map(({ firstKeyMs }) => firstKeyMs);
    return readSpread(spread.ops, places, hands.length > 0 ? Math.min(...hands) : 0, settings.setOrder);
  }, [history, child]);
  if (!read) return null;
  const set = read.current?.name ?? null;
  return (
    <>
      <h3>{spreadWords.proposal}</h3>
      <Said text={proposalText(read)} how={proposalHow(read)} />
      <div class="actions">
        {(read.current || read.kept.length > 0) && (
          <button
            type="button"
            class="main"
            onClick={() => acting.record(desk, draftsOf(child, read), spreadWords.accepted(set))}
          >
            {spreadWords.accept(set)}
          </button>
        )}
        <button type="button" class="quiet" onClick={() => turnTo('children', { child: child.id })}>
          {spreadWords.chooseSelf}
        </button>
      </div>
    </>
  );
}

function draftsOf({ id: child }: Child, { kept, known, current }: SpreadReading): readonly Draft[] {
  return [
    ...(known.length > 0 ? [{ kind: 'factsTicked', child, facts: known, known: true } as const] : []),
    ...kept.map((set) => ({ kind: 'setKept', child, set: set.id, kept: true }) as const),
    ...(current ? [{ kind: 'setStarted', child, set: current.id } as const] : []),
  ];
}
