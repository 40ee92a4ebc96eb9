import type { Ruling } from '../../core/record/household-record';
import type { Draft } from '../../core/record/record';
import type { Sat } from '../../core/record/sat';

/** A ruling on a sitting, to be recorded under the child and day the sitting is stored for. */
export function ruledDraft(sat: Sat, ruling: Ruling): Draft {
  return { kind: 'ruled', child: sat.child, target: sat.id, targetDay: sat.day, ruling };
}
