import type { FactId } from '../../../src/core/fact/fact';
import type { SheetOrder } from '../../../src/core/sheet/build-sheet';

/** What the rules need of a fact, read from its id alone. */
interface Reading {
  readonly answer: number;
  readonly partner: FactId | null;
}

const readings = new Map<FactId, Reading>();

function read(id: FactId): Reading {
  const known = readings.get(id);
  if (known) return known;
  const [op, first, second] = id.split('-');
  const [a, b] = [Number(first), Number(second)];
  const swaps = (op === 'add' || op === 'mul') && a !== b;
  const answer = op === 'add' ? a + b : op === 'sub' ? a - b : op === 'mul' ? a * b : a / b;
  const reading = { answer, partner: swaps ? (`${op}-${b}-${a}` as FactId) : null };
  readings.set(id, reading);
  return reading;
}

/** Whether a fact has a turn-around. */
export function hasPartner(id: FactId): boolean {
  return read(id).partner !== null;
}

/** Which rules of the design a sheet breaks, each judged anew from the cards as they lie. */
export function brokenRules(sheet: readonly FactId[], order: SheetOrder): readonly string[] {
  const broken: string[] = [];
  const counts = new Map<FactId, number>();
  for (const id of order.set) counts.set(id, 0);
  const keptAllowed = new Set(order.kept.map(({ fact }) => fact));
  const keptSeen: FactId[] = [];
  sheet.forEach((id, i) => {
    const count = counts.get(id);
    if (count !== undefined) counts.set(id, count + 1);
    else if (keptAllowed.has(id)) keptSeen.push(id);
    else broken.push('a stranger');
    if (sheet.indexOf(id, Math.max(0, i - 3)) < i) broken.push('a fact within three cards');
    const before = sheet[i - 1];
    if (before && read(before).answer === read(id).answer) broken.push('an answer twice running');
  });
  const times = [...counts.values()];
  if (Math.max(...times) - Math.min(...times) > 1) broken.push('counts more than one apart');
  if (new Set(keptSeen).size < keptSeen.length) broken.push('a kept fact twice');
  if (sheet.length !== order.length) broken.push('length');
  if (keptSeen.length !== Math.round(order.length * order.keptShare)) broken.push('kept share');
  for (const [id, count] of counts) {
    const { partner } = read(id);
    if (count > 0 && partner && counts.get(partner) === 0) broken.push('half a pair');
  }
  return broken;
}
