import { isFilled, type Mark, markPath } from './marks';

/** A mark or a line as a sample for the legend. */
export function Sample({ of }: { readonly of: Mark | 'level' | 'trend' }) {
  const isLine = of === 'level' || of === 'trend';
  return (
    <svg class="sample" width="22" height="14" viewBox="-11 -7 22 14" aria-hidden="true">
      {isLine ? (
        <g class={of}>
          <path d="M-10 0H10" />
        </g>
      ) : (
        <path class={isFilled[of] ? 'mark' : 'mark open'} d={markPath(of)} />
      )}
    </svg>
  );
}
