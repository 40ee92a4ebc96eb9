import { signal } from '@preact/signals';
import type { Id } from '../../core/record/stamp';
import type { PreparedPin } from '../../state/gate';

export type SetupStep =
  | { readonly at: 'storage' }
  /** In place of a child's steps: a file of another device, or of this one before it was emptied. */
  | { readonly at: 'restore' }
  | { readonly at: 'pin' }
  | { readonly at: 'code'; readonly prepared: PreparedPin }
  | { readonly at: 'child' }
  | { readonly at: 'known' }
  | { readonly at: 'set' }
  /** `records` are what was recorded of the child; a step back takes them back. */
  | { readonly at: 'done'; readonly child: Id; readonly records: readonly Id[] };

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

/** The steps for another child, once there is one. */
export const anotherSteps: readonly SetupStep['at'][] = ['child', 'known', 'set', 'done'];

/** Where set-up stands; outside the page, so that the idle lock does not begin it again. `null`: not running. */
export const setupStep = signal<SetupStep | null>(null);
