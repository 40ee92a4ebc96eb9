import { signal } from '@preact/signals';
import type { FactId } from '../../core/fact/fact';
import type { Id } from '../../core/record/stamp';
import type { PreparedPin } from '../../state/gate';

export type SetupStep =
  | { readonly at: 'storage' }
  | { readonly at: 'pin' }
  | { readonly at: 'code'; readonly prepared: PreparedPin }
  | { readonly at: 'child' }
  | { readonly at: 'known'; readonly child: Id; readonly marked: ReadonlySet<FactId> }
  | { readonly at: 'set'; readonly child: Id }
  | { readonly at: 'done'; readonly child: Id };

/** The steps in order, as counted on the screen. */
export const setupSteps: readonly SetupStep['at'][] = [
  'storage',
  'pin',
  'code',
  'child',
  'known',
  'set',
  'done',
];

/** Where set-up stands; outside the page, so that the idle lock does not begin it again. `null`: not running. */
export const setupStep = signal<SetupStep | null>(null);
