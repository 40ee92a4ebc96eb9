import type { GapLine } from './gap-line';
import type { Setting, Story } from './story';

/** A story in words: what happens, what is asked, and the unit beside the answer. */
export interface StoryWords {
  readonly told: string;
  readonly asked: string;
  readonly unit: string;
}

type Telling = (a: number, b: number) => StoryWords;

/** `1 plum`, `4 plums`. */
function many(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}

const tellings: Readonly<Record<Setting, Telling>> = {
  bowl: (a, b) => ({
    told: `You put ${many(a, 'plum')} in a bowl. Then you put in ${b} more.`,
    asked: 'How many plums are in the bowl?',
    unit: 'plums',
  }),
  shells: (a, b) => ({
    told: `You find ${many(a, 'shell')}. Then you find ${b} more.`,
    asked: 'How many shells have you found?',
    unit: 'shells',
  }),
  coat: (a, b) => ({
    told: `A coat has ${many(a, 'button')}. You sew on ${b} more.`,
    asked: 'How many buttons has it now?',
    unit: 'buttons',
  }),
  candles: (a, b) => ({
    told: `You light ${many(a, 'candle')}. You blow out ${b} of them.`,
    asked: 'How many candles still burn?',
    unit: 'candles',
  }),
  pegs: (a, b) => ({
    told: `You have ${many(a, 'peg')}. You use ${b} of them.`,
    asked: 'How many pegs are left?',
    unit: 'pegs',
  }),
  seeds: (a, b) => ({
    told: `A packet holds ${many(a, 'seed')}. You sow ${b} of them.`,
    asked: 'How many seeds are left?',
    unit: 'seeds',
  }),
  jars: (a, b) => ({
    told: `You fill ${many(a, 'jar')}. You put ${many(b, 'button')} in each.`,
    asked: 'How many buttons is that?',
    unit: 'buttons',
  }),
  tiles: (a, b) => ({
    told: `You lay ${many(a, 'row')} of ${many(b, 'tile')}.`,
    asked: 'How many tiles is that?',
    unit: 'tiles',
  }),
  bags: (a, b) => ({
    told: `You pack ${many(a, 'bag')}. You put ${many(b, 'pear')} in each.`,
    asked: 'How many pears is that?',
    unit: 'pears',
  }),
  plates: (a, b) => ({
    told: `You share ${many(a, 'grape')} fairly. You have ${many(b, 'plate')}.`,
    asked: 'How many grapes go on each plate?',
    unit: 'grapes',
  }),
  boxes: (a, b) => ({
    told: `You have ${many(a, 'egg')}. Each box holds ${b} of them.`,
    asked: 'How many boxes do you fill?',
    unit: 'boxes',
  }),
  ribbon: (a, b) => ({
    told: `You cut ${many(a, 'metre')} of ribbon into ${b} equal pieces.`,
    asked: 'How many metres long is each?',
    unit: 'metres',
  }),
};

/** A story in plain words. */
export function storyWords({ setting, fact }: Story): StoryWords {
  return tellings[setting](fact.a, fact.b);
}

/** What a gap line asks. */
export function lineAsk({ asked, way }: GapLine): string {
  if (asked !== null) return 'What fills the gap?';
  return way === 'up' ? 'Up by how many?' : 'Down by how many?';
}
