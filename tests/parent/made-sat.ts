import { type PromptId, parsePrompt } from '../../src/core/fact/prompt';
import type { Draft } from '../../src/core/record/record';
import type { KeyPress, Sat, Visit } from '../../src/core/record/sat';

type SatDraft = Extract<Draft, { kind: 'sat' }>;

/** What a child did with a card: what was typed and how long it took, or `null` for a skip. */
export type Did = { readonly gave: string; readonly ms: number } | null;

/** A sitting answered card by card, each key 0.3 s after the one before, the bell where the allowance ends. */
export function madeSat(
  prompts: readonly PromptId[],
  did: readonly Did[],
  other: Partial<Sat> = {},
): SatDraft {
  const allowanceMs = other.clock?.allowanceMs ?? null;
  const visits: Visit[] = [];
  let atMs = 0;
  for (const [place, one] of did.entries()) {
    const onsetMs = atMs;
    const takenMs = onsetMs + (one?.ms ?? 1000);
    const isLate = allowanceMs !== null && takenMs > allowanceMs;
    visits.push(one ? answered(place, onsetMs, takenMs, one.gave, isLate) : skipped(place, onsetMs, takenMs));
    atMs = takenMs;
    if (isLate) break;
  }
  return {
    kind: 'sat',
    child: 'wren',
    purpose: 'sheet',
    of: null,
    set: 'plus-2',
    seed: 1,
    prompts,
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: true,
    day: '2026-11-25',
    offsetMin: 0,
    zone: 'UTC',
    startedAt: 1_764_000_000_000,
    clockStepMs: 0.1,
    isolated: false,
    visits,
    away: [],
    ended: allowanceMs !== null && atMs > allowanceMs ? 'bell' : 'finished',
    endedMs: atMs,
    ...other,
  };
}

/** Every answer right, each in so many ms. */
export function allRight(prompts: readonly PromptId[], ms: number): readonly Did[] {
  return prompts.map((id) => ({ gave: `${parsePrompt(id)?.answer ?? 0}`, ms }));
}

function answered(place: number, onsetMs: number, endMs: number, gave: string, isLate: boolean): Visit {
  const keys = [...gave].map(
    (digit, index): KeyPress => [digit as KeyPress[0], endMs - 300 * (gave.length - index), 'touch'],
  );
  return {
    place,
    onsetMs,
    onsetBy: 'frame',
    keys: [...keys, ['done', endMs, 'touch']],
    end: 'taken',
    endMs,
    given: gave,
    took: 'done',
    ...(isLate ? { afterBell: true as const } : {}),
  };
}

function skipped(place: number, onsetMs: number, endMs: number): Visit {
  return {
    place,
    onsetMs,
    onsetBy: 'frame',
    keys: [['skip', endMs, 'touch']],
    end: 'skipped',
    endMs,
    given: null,
    took: null,
  };
}
