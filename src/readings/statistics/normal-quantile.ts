// The registry library's own quantile is good to four digits only, too few for the intervals below.
const centre = {
  over: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  under: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
};
const shoulder = {
  over: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  under: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
};
const tail = {
  over: [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  under: [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
};

/** The z below which a share `p` (0 to 1) of a standard normal lies. Wichura 1988, algorithm AS 241. */
export function normalQuantile(p: number): number {
  const fromHalf = p - 0.5;
  if (Math.abs(fromHalf) <= 0.425) {
    return fromHalf * ratio(centre, 0.180625 - fromHalf * fromHalf);
  }
  const depth = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  const size = depth <= 5 ? ratio(shoulder, depth - 1.6) : ratio(tail, depth - 5);
  return fromHalf < 0 ? -size : size;
}

/** The z that leaves half of `1 − level` beyond it on each side: 1.96 for .95. */
export function twoSidedZ(level: number): number {
  return normalQuantile((1 + level) / 2);
}

function ratio(
  of: { readonly over: readonly number[]; readonly under: readonly number[] },
  x: number,
): number {
  return polynomial(of.over, x) / polynomial(of.under, x);
}

function polynomial(highestFirst: readonly number[], x: number): number {
  return highestFirst.reduce((sum, coefficient) => sum * x + coefficient, 0);
}
