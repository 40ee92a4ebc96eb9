import '../../src/ui/tokens.css';
import { cleanup, configure, render } from '@testing-library/preact';
import type { GateData } from '../../src/core/gate/gate-data';
import { ParentSide } from '../../src/parent/parent-side';
import { type Page, place } from '../../src/parent/place';
import { setupStep } from '../../src/parent/setup/progress';
import { createGate, type Gate } from '../../src/state/gate';
import type { FakeDesk } from './fake-desk';

// Long enough for a machine that is busy with other tests.
configure({ asyncUtilTimeout: 8000 });

export const pin = '4826';

/** A gate with few rounds over a store in memory, its PIN set and open unless said otherwise. */
export async function testGate(isSet = true): Promise<Gate & { readonly recoveryCode: string }> {
  let data: GateData | null = null;
  const store = {
    read: async () => data,
    write: async (next: GateData) => {
      data = next;
    },
  };
  const gate = createGate(store, 10);
  await gate.load();
  const prepared = gate.prepare(pin);
  if (isSet) await prepared.keep();
  return Object.assign(gate, { recoveryCode: prepared.recoveryCode });
}

/** The parent's side, open at a page. */
export async function openPages(desk: FakeDesk, page: Page = 'today', gate?: Gate) {
  cleanup();
  setupStep.value = null;
  place.value = { page, sitting: null, child: null, fact: null };
  const open = gate ?? (await testGate());
  const view = render(<ParentSide desk={desk} gate={open} onBack={() => undefined} />);
  return { ...view, gate: open };
}
