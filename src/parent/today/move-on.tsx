import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Child } from '../../core/household/household';
import type { Draft } from '../../core/record/record';
import type { Id } from '../../core/record/stamp';
import type { Readiness } from '../../readings/move-on/readiness';
import type { Said as SaidText } from '../../readings/sentences/sentence';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { setName } from '../children/set-list';
import { Said } from '../parts/said';
import { turnTo } from '../place';
import { nextSet } from './next-set';
import { todayWords } from './words';

export interface MoveOnProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly readiness: Readiness | null;
  /** The proposal in words. */
  readonly said: SaidText | null;
  readonly acting: Acting;
}

/** The proposal to move on from the current set, in one tap, and taken back in another. */
export function MoveOn({ desk, child, readiness, said, acting }: MoveOnProps) {
  /** What moved the child on from here just now. */
  const moved = useSignal<{ readonly to: string; readonly records: readonly Id[] } | null>(null);
  const household = desk.household.value;
  const next = nextSet(household, child);

  function moveOn(from: Id, to: Id) {
    const drafts: Draft[] = [
      { kind: 'setKept', child: child.id, set: from, kept: true },
      { kind: 'setStarted', child: child.id, set: to },
      // A new set begins without the clock.
      ...(child.settings.timed
        ? [{ kind: 'childSettingsChanged', child: child.id, changes: { timed: false } } as const]
        : []),
    ];
    return acting.act(async () => {
      const made = await desk.record(drafts);
      moved.value = { to: setName(household, to), records: made.map(({ id }) => id) };
    });
  }

  function takeBack(records: readonly Id[]) {
    return acting.act(async () => {
      for (const record of records) await desk.undo(record);
      moved.value = null;
    });
  }

  const done = moved.value;
  const undo = useRef<HTMLButtonElement>(null);
  // The button that was pressed is gone, and with it the focus.
  useLayoutEffect(() => undo.current?.focus(), [done]);
  if (done) {
    return (
      <p role="status">
        {todayWords.movedOn(done.to)}{' '}
        <button ref={undo} type="button" class="link" onClick={() => takeBack(done.records)}>
          {todayWords.undo}
        </button>
      </p>
    );
  }
  if (!readiness?.isReady) return null;
  const { set } = readiness;
  return (
    <>
      <h3>{todayWords.readyTitle}</h3>
      {said && <Said {...said} />}
      <div class="actions">
        {next && (
          <button type="button" onClick={() => moveOn(set, next.id)}>
            {todayWords.moveOn(setName(household, set), next.name)}
          </button>
        )}
        <button type="button" class="quiet" onClick={() => turnTo('facts', { child: child.id })}>
          {todayWords.seeFacts}
        </button>
        <button type="button" class="quiet" onClick={() => turnTo('children', { child: child.id })}>
          {todayWords.chooseAnother}
        </button>
      </div>
    </>
  );
}
