import { signal } from '@preact/signals';
import type { Gate, PreparedPin } from '../state/gate';

/** The boat has no lock: the door stands open, and whatever PIN is tried or chosen is not kept. */
export function boatGate(): Gate {
  const nothingKept: PreparedPin = { recoveryCode: 'NO-CODE-ON-THE-BOAT', keep: async () => {} };
  return {
    phase: signal('open'),
    waitLeftMs: signal(0),
    isChecking: signal(false),
    load: async () => {},
    prepare: () => nothingKept,
    tryPin: async () => 'opened',
    tryRecoveryCode: async () => 'opened',
    changePin: async () => {},
    prepareCode: () => nothingKept,
    // The way back to the children is the desk's; there is nothing here to lock.
    lock: () => {},
  };
}
