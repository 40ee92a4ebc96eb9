import * as v from 'valibot';
import type {
  Away,
  AwayReason,
  Clock,
  Key,
  Purpose,
  Sat,
  SittingEnd,
  SpreadHalf,
  TrialDay,
  Via,
  Visit,
  VisitEnd,
} from '../core/record/sat';
import type { Sight } from '../core/record/settings';
import {
  count,
  day,
  type FieldsOf,
  factId,
  id,
  moment,
  ms,
  oneOf,
  promptId,
  shortText,
  small,
  stamp,
  within,
} from './stamp-schema';

const digits = {
  0: true,
  1: true,
  2: true,
  3: true,
  4: true,
  5: true,
  6: true,
  7: true,
  8: true,
  9: true,
} as const;
const key = oneOf<Key>({ ...digits, back: true, done: true, skip: true });
const via = oneOf<Via>({ touch: true, keys: true });
const isTrue = v.exactOptional(v.literal(true));

export const sight = oneOf<Sight>({ thread: true, hidden: true });

const visit = v.looseObject({
  place: small,
  onsetMs: ms,
  onsetBy: oneOf<Visit['onsetBy']>({ element: true, elementCoarse: true, frame: true, paper: true }),
  from: v.exactOptional(shortText),
  shown: isTrue,
  keys: v.array(v.strictTuple([key, ms, via])),
  late: v.exactOptional(small),
  end: oneOf<VisitEnd>({ taken: true, skipped: true, back: true, left: true }),
  endMs: ms,
  given: v.nullable(shortText),
  took: v.nullable(oneOf<NonNullable<Visit['took']>>({ itself: true, done: true })),
  afterBell: isTrue,
} satisfies FieldsOf<Visit>);

const away = v.looseObject({
  why: oneOf<AwayReason>({ hidden: true, asleep: true, stopped: true, torn: true, clocks: true }),
  fromMs: ms,
  toMs: ms,
  afterVisits: small,
} satisfies FieldsOf<Away>);

const clock = v.looseObject({ allowanceMs: within(0, 86_400_000), sight } satisfies FieldsOf<Clock>);
const trial = v.looseObject({ trial: id, day: small } satisfies FieldsOf<TrialDay>);
const spread = v.looseObject({ spread: id, part: v.picklist([0, 1]) } satisfies FieldsOf<SpreadHalf>);

const purpose = oneOf<Purpose>({
  sheet: true,
  row: true,
  mending: true,
  practice: true,
  cards: true,
  firstTry: true,
  lines: true,
});

/** One sitting. */
export const satSchema = v.looseObject({
  ...stamp,
  kind: v.literal('sat'),
  child: id,
  purpose,
  of: v.nullable(id),
  set: v.nullable(id),
  seed: count,
  prompts: v.array(promptId),
  clock: v.nullable(clock),
  takesItself: v.boolean(),
  onWrong: oneOf<Sat['onWrong']>({ goOn: true, showAgain: true }),
  keepTimes: v.boolean(),
  shownFirst: v.exactOptional(v.array(small)),
  twinOf: v.exactOptional(v.array(factId)),
  enoughMs: v.exactOptional(within(0, 86_400_000)),
  lookBack: isTrue,
  second: isTrue,
  paper: isTrue,
  trial: v.exactOptional(trial),
  spread: v.exactOptional(spread),
  day,
  offsetMin: within(-1440, 1440),
  zone: shortText,
  startedAt: moment,
  clockStepMs: within(0, 60_000),
  isolated: v.boolean(),
  visits: v.array(visit),
  away: v.array(away),
  ended: oneOf<SittingEnd>({ finished: true, bell: true, enough: true, stopped: true, torn: true }),
  endedMs: ms,
} satisfies FieldsOf<Sat>);
