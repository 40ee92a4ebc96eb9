import { parsePrompt } from '../../../src/core/fact/prompt';
import type { RuledSat } from '../../../src/core/household/history';
import { noRulings, type SatRulings } from '../../../src/core/marking/sat-rulings';
import type { Key, Sat, SittingPlan } from '../../../src/core/record/sat';
import { beginSitting, type SittingEvent, sealSitting, stepSitting } from '../../../src/core/sitting/machine';

/** What a child does with a card: gives the true answer, a wrong one, skips, or walks away for good. */
export type Act = 'right' | 'wrong' | 'skip' | 'leave';

export interface Manner {
  /** What is done with the nth card shown, from 0. */
  readonly act: (showing: number, place: number) => Act;
  /** Ms from the card to the answer. */
  readonly tookMs?: number;
}

let sat = 0;

/** Sits a plan through the real machine and seals it as a record of `day`. */
export function sit(plan: SittingPlan, day: string, { act, tookMs = 1500 }: Manner): Sat {
  let state = beginSitting(plan);
  let atMs = 0;
  const send = (event: SittingEvent) => {
    state = stepSitting(state, event).state;
  };
  for (let cards = 0; state.phase !== 'ended' && cards < 500; cards += 1) {
    send({ type: 'shown', atMs, by: 'element' });
    const done = act(cards, state.place);
    if (done === 'leave') {
      send({ type: 'stopped', atMs: atMs + 10 });
      break;
    }
    atMs += tookMs;
    for (const key of keysFor(state.plan.prompts[state.place] ?? '', done)) {
      if (state.phase === 'answering') send({ type: 'key', key, atMs, via: 'keys' });
    }
  }
  sat += 1;
  const start = {
    day,
    offsetMin: 0,
    zone: 'UTC',
    startedAt: 0,
    clockStepMs: 0.005,
    isolated: true,
  };
  return { ...sealSitting(state, start), id: `sat-${sat}`, v: 1, seq: sat, device: 'slate', at: 0 };
}

function keysFor(id: string, act: Act): readonly Key[] {
  if (act === 'skip') return ['skip'];
  const answer = parsePrompt(id)?.answer ?? 0;
  // As long as the true answer, so that it takes itself on a timed sheet.
  const given =
    act === 'right' ? `${answer}` : `${answer}`.replace(/\d$/, (digit) => (digit === '9' ? '8' : '9'));
  return [...(given.split('') as Key[]), 'done'];
}

export function ruled(record: Sat, rulings: Partial<SatRulings> = {}): RuledSat {
  return { sat: record, child: record.child, rulings: { ...noRulings, ...rulings } };
}
