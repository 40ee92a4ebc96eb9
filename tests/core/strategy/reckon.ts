/** The value of `5 × 8 + 2 × 8`, worked from left to right, × and ÷ first; `NaN` for anything else. */
export function reckon(text: string): number {
  return text
    .replaceAll(' − ', ' + −')
    .split(' + ')
    .reduce((sum, term) => sum + product(term.trim()), 0);
}

/** What the box must hold; `null` where no or more than one number from 0 to 144 does. */
export function solve(equation: string): number | null {
  const [left = '', right = ''] = equation.split('=');
  const wanted = reckon(right.trim());
  const fitting = Array.from({ length: 145 }, (_, n) => n).filter(
    (n) => reckon(left.trim().replace('□', String(n))) === wanted,
  );
  return fitting.length === 1 ? (fitting[0] ?? null) : null;
}

function product(term: string): number {
  const [sign, body] = term.startsWith('−') ? [-1, term.slice(1)] : [1, term];
  const parts = body.split(' ');
  let value = number(parts[0]);
  for (let at = 1; at < parts.length; at += 2) {
    const by = number(parts[at + 1]);
    if (parts[at] === '×') value *= by;
    else if (parts[at] === '÷') value /= by;
    else return Number.NaN;
  }
  return sign * value;
}

function number(text: string | undefined): number {
  return text !== undefined && /^\d+$/.test(text) ? Number(text) : Number.NaN;
}
