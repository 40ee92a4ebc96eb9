import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeRecoveryCode, readRecoveryCode, writeRecoveryCode } from '../../../src/core/gate/recovery-code';

const bytes = fc.uint8Array({ minLength: 16, maxLength: 16 });

test('the 32 signs are Douglas Crockford’s: no I, L, O or U', () => {
  const all = [0, 16].map((from) => makeRecoveryCode(Uint8Array.from({ length: 16 }, (_, at) => from + at)));
  expect(all.join('')).toBe('0123456789ABCDEFGHJKMNPQRSTVWXYZ');
});

test('a code written in groups reads back, in any case and with any gaps', () => {
  fc.assert(
    fc.property(bytes, (random) => {
      const code = makeRecoveryCode(random);
      const written = writeRecoveryCode(code);
      expect(written).toMatch(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/);
      for (const typed of [written, written.toLowerCase(), ` ${written.replaceAll('-', ' – ')} `, code]) {
        expect(readRecoveryCode(typed)).toEqual({ ok: true, code });
      }
    }),
  );
});

test('every sign is equally likely: each comes from eight of the 256 bytes', () => {
  const counts = new Map<string, number>();
  for (let byte = 0; byte < 256; byte += 1) {
    const sign = makeRecoveryCode(new Uint8Array(16).fill(byte)).charAt(0);
    counts.set(sign, (counts.get(sign) ?? 0) + 1);
  }
  expect([...counts.values()]).toEqual(Array(32).fill(8));
});

test('O typed for nought, I and L for one, are read as meant', () => {
  expect(readRecoveryCode('oOiI-lL00-1111-ABCD')).toEqual({ ok: true, code: '0011110011' + '11ABCD' });
});

test('a code too short, too long, empty or with another sign is told apart', () => {
  expect(readRecoveryCode('ABCD')).toEqual({ ok: false, fault: 'length' });
  expect(readRecoveryCode('A'.repeat(17))).toEqual({ ok: false, fault: 'length' });
  expect(readRecoveryCode(' - ')).toEqual({ ok: false, fault: 'empty' });
  expect(readRecoveryCode('ABCD-ABCD-ABCD-ABC!')).toEqual({ ok: false, fault: 'signs' });
  expect(readRecoveryCode('UUUU-ABCD-ABCD-ABCD')).toEqual({ ok: false, fault: 'signs' });
});

test('a code needs its sixteen bytes', () => {
  expect(() => makeRecoveryCode(new Uint8Array(15))).toThrow(RangeError);
});
