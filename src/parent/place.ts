import { signal } from '@preact/signals';
import type { FactId } from '../core/fact/fact';
import type { Id } from '../core/record/stamp';

/** The parent's pages. */
export type Page =
  | 'today'
  | 'marking'
  | 'facts'
  | 'overTime'
  | 'paper'
  | 'children'
  | 'sittings'
  | 'recordBook'
  | 'settings'
  | 'about'
  /** Reached from Today: not in the navigation. */
  | 'spoken'
  | 'monday';

/** In the order of the navigation. */
export const pages: readonly Page[] = [
  'today',
  'marking',
  'facts',
  'overTime',
  'paper',
  'children',
  'sittings',
  'recordBook',
  'settings',
  'about',
];

/** Where the parent is: kept outside the page, so that unlocking comes back to the same place. */
export interface Place {
  readonly page: Page;
  /** The sitting read in Marking; `null` for the list. */
  readonly sitting: Id | null;
  /** The child looked at in Facts, Over time, Children, Settings or Sittings. */
  readonly child: Id | null;
  /** The fact whose answers are open in Facts. */
  readonly fact: FactId | null;
}

export const place = signal<Place>({ page: 'today', sitting: null, child: null, fact: null });

/** Turns to a page. */
export function turnTo(page: Page, to: Partial<Omit<Place, 'page'>> = {}): void {
  place.value = { page, sitting: null, child: place.value.child, fact: null, ...to };
}
