import * as v from 'valibot';
import { count, day, id, ms, promptId, stamp } from './stamp-schema';

const key = v.picklist(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'back', 'done', 'skip']);
const via = v.picklist(['touch', 'keys']);

const visit = v.looseObject({
  place: count,
  onsetMs: ms,
  onsetBy: v.picklist(['element', 'elementCoarse', 'frame']),
  from: v.exactOptional(v.string()),
  shown: v.exactOptional(v.literal(true)),
  keys: v.array(v.strictTuple([key, ms, via])),
  late: v.exactOptional(count),
  end: v.picklist(['taken', 'skipped', 'back', 'left']),
  endMs: ms,
  given: v.nullable(v.string()),
  took: v.nullable(v.picklist(['itself', 'done'])),
  afterBell: v.exactOptional(v.literal(true)),
});

const away = v.looseObject({
  why: v.picklist(['hidden', 'asleep', 'stopped', 'torn', 'clocks']),
  fromMs: ms,
  toMs: ms,
  afterVisits: count,
});

const clock = v.looseObject({ allowanceMs: v.number(), sight: v.picklist(['thread', 'hidden']) });

/** One sitting, as `core/record/sat` has it. */
export const satSchema = v.looseObject({
  ...stamp,
  kind: v.literal('sat'),
  child: id,
  purpose: v.picklist(['sheet', 'row', 'mending', 'practice']),
  of: v.nullable(id),
  set: v.nullable(id),
  seed: v.number(),
  prompts: v.array(promptId),
  clock: v.nullable(clock),
  takesItself: v.boolean(),
  onWrong: v.picklist(['goOn', 'showAgain']),
  keepTimes: v.boolean(),
  second: v.exactOptional(v.literal(true)),
  spread: v.exactOptional(v.looseObject({ spread: id, part: v.picklist([0, 1]) })),
  trial: v.exactOptional(v.looseObject({ trial: id, day: count })),
  day,
  offsetMin: v.number(),
  zone: v.string(),
  startedAt: v.number(),
  clockStepMs: v.number(),
  isolated: v.boolean(),
  visits: v.array(visit),
  away: v.array(away),
  ended: v.picklist(['finished', 'bell', 'stopped', 'torn']),
  endedMs: ms,
});
