import type { Draft } from '../../src/core/record/record';
import { juniper } from '../../src/demo/juniper';
import { makeBoat } from '../../src/demo/make-boat';
import { teo } from '../../src/demo/teo';
import { wren } from '../../src/demo/wren';
import { type FakeDesk, fakeDesk } from './fake-desk';

const today = '2026-11-25';
const { records } = makeBoat(today, 20_260);

export const crew = { wren, teo, juniper };

/** A desk over the eight weeks of the boat, and what more is recorded on it. */
export function boatDesk(more: readonly Draft[] = []): FakeDesk {
  return fakeDesk(today, more, records);
}
