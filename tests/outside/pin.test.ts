import { expect, test } from 'vitest';
import { deriveHash, pinRounds } from '../../src/state/pin-hash';

/** RFC 7914, section 11: "Test Vectors for PBKDF2 with HMAC-SHA-256", 64 bytes each. */
const vectors = [
  {
    secret: 'passwd',
    salt: 'salt',
    rounds: 1,
    hex:
      '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc' +
      '49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783',
  },
  {
    secret: 'Password',
    salt: 'NaCl',
    rounds: 80_000,
    hex:
      '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56' +
      'a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d',
  },
];

for (const { secret, salt, rounds, hex } of vectors) {
  test(`the PIN’s hash gives RFC 7914’s bytes for "${secret}" in ${rounds} rounds`, async () => {
    const bytes = await deriveHash(secret, new TextEncoder().encode(salt), rounds, 64);
    expect(Buffer.from(bytes).toString('hex')).toBe(hex);
  });
}

test('the rounds are those of OWASP’s Password Storage Cheat Sheet for PBKDF2-HMAC-SHA-256', () => {
  expect(pinRounds).toBe(600_000);
});
