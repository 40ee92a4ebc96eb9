/**
 * The seed of a child's nth list on a day: a whole number from 0 to 2³² − 1, the same for the same child, day and n.
 * FNV-1a over the text, so that a sheet planned twice is the same sheet (Fowler, Noll & Vo).
 */
export function seedFor(child: string, day: string, what: string, nth: number): number {
  let hash = 0x811c9dc5;
  for (const letter of `${child}/${day}/${what}/${nth}`) {
    hash ^= letter.codePointAt(0) ?? 0;
    hash = Math.imul(hash, 0x01000193) >>> 0;
  }
  return hash;
}
