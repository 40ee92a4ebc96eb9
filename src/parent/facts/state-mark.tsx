import type { FactState } from '../../readings/facts/fact-reading';

/** A knot, half a knot, a crooked thread, an open ring, three loose dots: told by shape, in one ink. */
const shapes: Readonly<Record<FactState, { readonly d: string; readonly fill?: string }>> = {
  quick: { d: 'M8 3A5 5 0 1 0 8.01 3Z', fill: 'M8 3A5 5 0 1 0 8.01 3Z' },
  slow: { d: 'M8 3A5 5 0 1 0 8.01 3Z', fill: 'M8 3A5 5 0 0 0 8 13Z' },
  uneven: { d: 'M1.5 10.5 5 5.5 8 10.5 11 5.5 14.5 10.5' },
  toLearn: { d: 'M8 3A5 5 0 1 0 8.01 3Z' },
  notEnough: { d: 'M3 8h.01M8 8h.01M13 8h.01' },
};

/** The shape of a fact's state. */
export function StateMark({ state }: { readonly state: FactState }) {
  const { d, fill } = shapes[state];
  return (
    <svg class="state-mark" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      {fill && <path d={fill} fill="currentColor" />}
      <path
        d={d}
        fill="none"
        stroke="currentColor"
        stroke-width={state === 'notEnough' ? 2.5 : 1.75}
        stroke-linecap="round"
        stroke-linejoin="round"
      />
    </svg>
  );
}
