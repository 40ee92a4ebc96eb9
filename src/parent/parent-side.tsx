import './parent.css';
import { batch, useSignal, useSignalEffect } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';
import type { Id } from '../core/record/stamp';
import type { Desk } from '../state/desk';
import type { Gate } from '../state/gate';
import { watchIdle } from '../state/gate-idle';
import { GateScreen } from './gate-screen/gate-screen';
import { gateWords } from './gate-screen/words';

export interface ParentSideProps {
  readonly desk: Desk;
  readonly gate: Gate;
  /** Back to the child's side, from the locked door. */
  readonly onBack: () => void;
  /** Leaves the demo household; left out at home. */
  readonly onLeaveBoat?: () => void;
  /** The first screen was asked for a file to restore. */
  readonly isRestoring?: boolean;
  /** The child at whose cloth the grown-up was called. */
  readonly calledBy?: Id | null;
}

interface InsideProps {
  readonly desk: Desk;
  readonly gate: Gate;
  readonly onLeaveBoat: (() => void) | null;
  readonly isRestoring: boolean;
  readonly calledBy: Id | null;
}

/** The parent's side: the door, and behind it the pages, whose code is fetched only once it is open. */
export function ParentSide({
  desk,
  gate,
  onBack,
  onLeaveBoat,
  isRestoring = false,
  calledBy = null,
}: ParentSideProps) {
  const inside = useSignal<{ readonly Inside: ComponentType<InsideProps> } | null>(null);
  const hasFailed = useSignal(false);
  const phase = gate.phase.value;
  const guarded = useMemo(() => withGate(desk, gate), [desk, gate]);
  const isPastDoor = phase === 'open' || phase === 'unset';

  useEffect(() => {
    if (gate.phase.value === 'loading') void gate.load();
  }, [gate]);

  useEffect(() => {
    if (phase !== 'open' && phase !== 'renewing') return undefined;
    return watchIdle(guarded.lock);
  }, [phase, guarded]);

  useSignalEffect(() => {
    const isOpen = gate.phase.value === 'open' || gate.phase.value === 'unset';
    if (!isOpen || inside.peek()) return;
    import('./inside').then(
      ({ Inside }) => {
        inside.value = { Inside };
      },
      () => {
        hasFailed.value = true;
      },
    );
  });

  if (!isPastDoor) return <GateScreen gate={gate} onBack={onBack} />;
  if (inside.value)
    return (
      <inside.value.Inside
        desk={guarded}
        gate={gate}
        onLeaveBoat={onLeaveBoat ?? null}
        isRestoring={isRestoring}
        calledBy={calledBy}
      />
    );
  return (
    <main class="parent gate">
      <p role="status">{hasFailed.value ? gateWords.notFetched : gateWords.loading}</p>
    </main>
  );
}

/** The desk whose ways out also lock the gate, in one step: nothing of the pages is left beside the door. */
function withGate(desk: Desk, gate: Gate): Desk {
  return {
    ...desk,
    lock: () =>
      batch(() => {
        gate.lock();
        desk.lock();
      }),
    handOver: (child) =>
      batch(() => {
        gate.lock();
        desk.handOver(child);
      }),
  };
}
