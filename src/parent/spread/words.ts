import type { Operation } from '../../core/fact/fact';
import type { GroupSeen, SpreadReading } from '../../core/spread/read-spread';
import { operationNames } from '../fact-grid/words';
import { count, listed, sentence } from '../words';

export const spreadWords = {
  over: 'A spread over',
  none: 'Tick one operation at least.',
  title: 'Two days of a few facts from every set',
  lead: (name: string) =>
    `On two school days ${name}’s sheet asks 20 to 25 facts from all sets of an operation, without a clock. Then Today proposes which sets to keep and which to begin with.`,
  ask: 'Begin with the next sheet',
  asked: (name: string) => `${name}’s next two sheets ask a few facts from every set.`,
  stop: 'Do without it',
  stopped: 'The spread is taken back.',
  running: (ops: readonly Operation[]) => `A spread over ${opsText(ops)} is on.`,
  proposal: 'What the two days say',
  accept: (set: string | null) => (set === null ? 'Keep them all' : `Do so: begin with “${set}”`),
  accepted: (set: string | null) => (set === null ? 'All of them are kept.' : `“${set}” has begun.`),
  chooseSelf: 'Choose a set myself',
} as const;

/** `addition and subtraction`. */
export function opsText(ops: readonly Operation[]): string {
  return listed(ops.map((op) => operationNames[op].toLowerCase()));
}

/** What a spread proposes, in one sentence. */
export function proposalText({ kept, current }: SpreadReading): string {
  const begin = current ? `begin with “${current.name}”` : 'nothing is left to begin with';
  if (kept.length === 0) return sentence(`${begin}: no set was all right and quick.`);
  return `Keep ${count(kept.length, 'set', 'sets')} in practice and tick their facts as known; ${begin}.`;
}

/** Why, group by group, and by what rule. */
export function proposalHow({ groups }: SpreadReading): readonly string[] {
  return [
    `${groups.map(groupText).join('; ')}.`,
    'A set counts as known when every fact asked from it was right and half of them or more were begun within about 3\u00a0s of the card. Two or three facts a set are few: what is proposed can be undone.',
  ];
}

function groupText({ set, asked, right, thinkMs }: GroupSeen): string {
  const pace =
    thinkMs === null || right === 0 ? '' : `, begun after about ${(thinkMs / 1000).toFixed(1)}\u00a0s`;
  return `${set.name}: ${right} of ${asked} right${pace}`;
}
