/** A totally antisymmetric quasigroup of order ten (Damm 2004, Total anti-symmetrische Quasigruppen, Marburg). */
const table = [
  '0317598642',
  '7092154863',
  '4206871359',
  '1750983426',
  '6123045978',
  '3674209581',
  '5869720134',
  '8945362017',
  '9438617205',
  '2581436790',
] as const;

/**
 * The check digit of a number in digits: with it behind them one digit mistyped is always noticed, and so are two
 * neighbours that changed places.
 */
export function checkDigit(digits: string): string {
  let interim = 0;
  for (const digit of digits) interim = Number(table[interim]?.[Number(digit)]);
  return String(interim);
}
