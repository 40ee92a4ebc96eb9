/**
 * 32 signs that can't be taken for one another: the digits and the capitals without I, L, O and U (Douglas
 * Crockford's base 32). Each carries five bits.
 */
const signs = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const signCount = 16;
const groupSize = 4;

/** How many random bytes a code is made from, one for each sign. */
export const recoveryBytes = signCount;

/** The recovery code of 16 random bytes, without gaps; the top three bits of each byte are not used. */
export function makeRecoveryCode(bytes: Uint8Array): string {
  if (bytes.length !== recoveryBytes) throw new RangeError(`a recovery code needs ${recoveryBytes} bytes`);
  return Array.from(bytes, (byte) => signs.charAt(byte & 31)).join('');
}

/** The code as it is shown and written down: four groups of four. */
export function writeRecoveryCode(code: string): string {
  return Array.from({ length: signCount / groupSize }, (_, group) =>
    code.slice(group * groupSize, (group + 1) * groupSize),
  ).join('-');
}

/** Why a text is no recovery code. */
export type CodeFault = 'empty' | 'length' | 'signs';

/** A text read as a recovery code. */
export type CodeReading =
  | { readonly ok: true; readonly code: string }
  | { readonly ok: false; readonly fault: CodeFault };

/** Reads a typed code: case, spaces and hyphens don't matter, O counts as 0, I and L as 1. */
export function readRecoveryCode(text: string): CodeReading {
  const code = text
    .toUpperCase()
    .replace(/[\s\p{Dash}]+/gu, '')
    .replace(/O/g, '0')
    .replace(/[IL]/g, '1');
  if (code === '') return { ok: false, fault: 'empty' };
  if (!Array.from(code).every((sign) => signs.includes(sign))) return { ok: false, fault: 'signs' };
  return code.length === signCount ? { ok: true, code } : { ok: false, fault: 'length' };
}
