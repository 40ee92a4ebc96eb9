/** Fewest and most digits of a PIN. */
const pinLength = { least: 4, most: 8 } as const;

/** Why a text is no PIN. */
export type PinFault = 'empty' | 'notDigits' | 'tooShort' | 'tooLong';

/** A text read as a PIN: 4 to 8 digits; spaces around and between are dropped, as pasting may bring them. */
export type PinReading =
  | { readonly ok: true; readonly pin: string }
  | { readonly ok: false; readonly fault: PinFault };

/** Reads what was typed or pasted as a PIN. */
export function readPin(text: string): PinReading {
  const pin = text.replace(/\s+/g, '');
  if (pin === '') return { ok: false, fault: 'empty' };
  if (!/^[0-9]+$/.test(pin)) return { ok: false, fault: 'notDigits' };
  if (pin.length < pinLength.least) return { ok: false, fault: 'tooShort' };
  if (pin.length > pinLength.most) return { ok: false, fault: 'tooLong' };
  return { ok: true, pin };
}
