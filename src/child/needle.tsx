export interface PlacedProps {
  readonly x: number;
  readonly y: number;
  readonly turn?: number;
}

/** A needle whose eye is at x,y. */
export function Needle({ x, y, turn = 0 }: PlacedProps) {
  return (
    <path
      class="steel"
      transform={`translate(${x} ${y}) rotate(${turn})`}
      d="M-3 0Q2-4 12-2.600L46 0L12 2.600Q2 4-3 0ZM1 0H8"
    />
  );
}
