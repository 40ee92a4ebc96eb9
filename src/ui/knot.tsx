/** The grown-ups' knot, drawn in one thread. */
export function Knot() {
  return (
    <svg viewBox="0 0 32 32" aria-hidden="true">
      <path d="M3 21c6 2 10-1 13-6s7-8 9-4-3 8-9 7-8-5-6-9 7-3 9 2 3 11 10 12" />
    </svg>
  );
}
