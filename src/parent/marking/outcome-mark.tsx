import type { Marked } from '../../core/marking/marked';

type Outcome = Marked['places'][number]['outcome'];

/** A knot, an open ring, a half stitch, a basting thread, half a knot: told by shape, in one ink. */
const shapes: Record<Outcome, string> = {
  right: 'M8 5.5A2.5 2.5 0 1 0 8.01 5.5M8 7.5v1',
  wrong: 'M8 2.5A5.5 5.5 0 1 0 8.01 2.5',
  skipped: 'M3 13 13 3',
  notReached: 'M2 8h2M7 8h2M12 8h2',
  unfinished: 'M8 2.5A5.5 5.5 0 0 0 8 13.5',
};

/** The shape of an outcome, beside its words. */
export function OutcomeMark({ place }: { readonly place: Marked['places'][number] }) {
  return (
    <svg class="outcome" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      <path
        d={shapes[place.outcome]}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linecap="round"
      />
    </svg>
  );
}
