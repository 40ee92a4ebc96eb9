/** What the digits were keyed on: the card's own pad in phone or calculator order, or a keyboard; or a pencil wrote them. */
export type Pad = 'phone' | 'calculator' | 'keyboard' | 'pencil';

/** Rows of keys as they lie, a blank where no digit is. A keyboard has a row of digits and a number block. */
const blocks: Readonly<Record<Pad, readonly (readonly string[])[]>> = {
  phone: [['123', '456', '789', ' 0 ']],
  calculator: [['789', '456', '123', ' 0 ']],
  keyboard: [['1234567890'], ['789', '456', '123', '00 ']],
  pencil: [],
};

const touching: Readonly<Record<Pad, ReadonlySet<string>>> = {
  phone: pairsOf(blocks.phone),
  calculator: pairsOf(blocks.calculator),
  keyboard: pairsOf(blocks.keyboard),
  pencil: pairsOf(blocks.pencil),
};

/**
 * Whether two digit keys touch on a pad: they share a side. Keys that meet at a corner only are not counted,
 * as a finger that strays goes over a side (our own decision, no source). A key does not touch itself.
 */
export function keysTouch(pad: Pad, one: string, other: string): boolean {
  return one !== other && touching[pad].has(one + other);
}

function pairsOf(all: readonly (readonly string[])[]): ReadonlySet<string> {
  const pairs = new Set<string>();
  for (const rows of all) {
    rows.forEach((row, y) => {
      [...row].forEach((key, x) => {
        for (const next of [row[x + 1], rows[y + 1]?.[x]]) {
          if (next !== undefined) pairs.add(key + next).add(next + key);
        }
      });
    });
  }
  return pairs;
}
