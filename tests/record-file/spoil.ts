import { makeDice } from '../../src/core/sheet/dice';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

const hostile = [
  '__proto__',
  'constructor',
  '<img src=x onerror=alert(1)>',
  '</script><script>alert(1)</script>',
  '\u202eneW\u202c',
  '\u0000\u0007',
  '=1+1',
  '../../etc',
  'x'.repeat(10_000),
  '🧵'.repeat(500),
  '2025-02-29',
  '9999-12-31',
  '',
];
const numbers = [-1, 0, 0.5, 1e9, 1e308, -1e308, 2 ** 53, 1e11, 8.64e15, 253_402_300_799_999];

/** A file's text with a fault or two, the same for the same seed: bits, cuts, types, depth, doubles, strings. */
export function spoil(text: string, seed: number): string {
  const dice = makeDice(seed);
  const pick = <T>(list: readonly T[]): T => list[dice.below(list.length)] as T;

  function inText(whole: string): string {
    const at = dice.below(whole.length);
    switch (dice.below(5)) {
      case 0:
        return whole.slice(0, at);
      case 1:
        return whole.slice(0, at) + whole.slice(at + 1 + dice.below(40));
      case 2:
        return whole.slice(0, at) + pick(hostile) + whole.slice(at);
      case 3:
        return whole.slice(0, at) + whole.slice(dice.below(whole.length));
      default: {
        const flipped = String.fromCharCode(whole.charCodeAt(at) ^ (1 << dice.below(8)));
        return whole.slice(0, at) + flipped + whole.slice(at + 1);
      }
    }
  }

  function nested(depth: number): Json {
    let value: Json = 'deep';
    for (let left = depth; left > 0; left -= 1) value = dice.below(2) === 0 ? [value] : { a: value };
    return value;
  }

  function other(value: Json): Json {
    switch (dice.below(8)) {
      case 0:
        return null;
      case 1:
        return pick(numbers);
      case 2:
        return pick(hostile);
      case 3:
        return [value, value];
      case 4:
        return { value };
      case 5:
        return nested(pick([3, 20, 40, 3000]));
      case 6:
        return typeof value === 'number' ? value + pick([-1, 1, 1000, 86_400_000]) : !value;
      default:
        return typeof value === 'string' ? value.split('').reverse().join('') : `${value}`;
    }
  }

  /** Changes one value somewhere inside, or one field's name. */
  function inside(value: Json): Json {
    if (typeof value !== 'object' || value === null) return other(value);
    const keys = Object.keys(value);
    const key = keys[dice.below(Math.max(1, keys.length))];
    if (key === undefined || dice.below(9) === 0) return other(value);
    if (Array.isArray(value)) return value.map((one, index) => (`${index}` === key ? inside(one) : one));
    const { [key]: chosen = null, ...rest } = value;
    if (dice.below(6) === 0) return dice.below(2) === 0 ? rest : own(rest, pick(hostile), chosen);
    return { ...value, [key]: inside(chosen) };
  }

  function inRecords(file: { records: Json[] }): string {
    const at = dice.below(file.records.length);
    const record = file.records[at] ?? null;
    switch (dice.below(6)) {
      case 0:
        file.records.push(record);
        break;
      case 1:
        file.records.push(inside(record));
        break;
      case 2:
        file.records.splice(at, 1);
        break;
      case 3:
        return JSON.stringify(inside(file as unknown as Json));
      default:
        file.records[at] = inside(record);
    }
    return lines(file);
  }

  let spoilt = text;
  for (let faults = dice.below(4) === 0 ? 2 : 1; faults > 0; faults -= 1) {
    const file = dice.below(4) === 0 ? null : parsed(spoilt);
    spoilt = file ? inRecords(file) : inText(`${spoilt} `);
  }
  return spoilt;
}

// Spread alone would set a prototype where the file's own text has a field of that name.
function own(rest: { [key: string]: Json }, key: string, value: Json): Json {
  return Object.defineProperty({ ...rest }, key, { value, enumerable: true });
}

function parsed(text: string): { records: Json[] } | null {
  try {
    const file = JSON.parse(text);
    return Array.isArray(file?.records) && file.records.length > 0 ? file : null;
  } catch {
    return null;
  }
}

/** One record a line, as the app writes. */
function lines({ records, ...head }: { records: Json[] }): string {
  const all = records.map((record) => JSON.stringify(record)).join(',\n');
  return `${JSON.stringify(head).slice(0, -1)},"records":[\n${all}\n]}\n`;
}
