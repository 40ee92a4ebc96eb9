import type { KeptSecret } from '../core/gate/gate-data';

/** OWASP's figure for PBKDF2-HMAC-SHA-256 (Password Storage Cheat Sheet). */
export const pinRounds = 600_000;
const saltBytes = 16;
const hashBytes = 32;

/** PBKDF2-HMAC-SHA-256 on the browser's own threads: the screen stays free. */
export async function deriveHash(
  secret: string,
  salt: Uint8Array<ArrayBuffer>,
  rounds: number,
  bytes: number,
): Promise<Uint8Array> {
  const key = await crypto.subtle.importKey('raw', new TextEncoder().encode(secret), 'PBKDF2', false, [
    'deriveBits',
  ]);
  const bits = await crypto.subtle.deriveBits(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds },
    key,
    bytes * 8,
  );
  return new Uint8Array(bits);
}

/** What to keep of a secret, with a salt of its own. */
export async function keepSecret(secret: string, rounds: number = pinRounds): Promise<KeptSecret> {
  const salt = crypto.getRandomValues(new Uint8Array(saltBytes));
  const hash = await deriveHash(secret, salt, rounds, hashBytes);
  return { salt: toBase64(salt), hash: toBase64(hash), rounds };
}

/** Whether this is the secret that was kept. */
export async function isSecret(secret: string, kept: KeptSecret): Promise<boolean> {
  const expected = fromBase64(kept.hash);
  const hash = await deriveHash(secret, fromBase64(kept.salt), kept.rounds, expected.length);
  return isSameBytes(hash, expected);
}

/** Compares every byte whatever differs, so that the time taken tells nothing. */
export function isSameBytes(x: Uint8Array, y: Uint8Array): boolean {
  if (x.length !== y.length) return false;
  let difference = 0;
  for (const [index, byte] of x.entries()) difference |= byte ^ (y[index] ?? 0);
  return difference === 0;
}

function toBase64(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes));
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
}
