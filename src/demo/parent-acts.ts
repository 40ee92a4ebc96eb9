import type { FactId } from '../core/fact/fact';
import type { Draft } from '../core/record/record';
import type { ChildSettings } from '../core/record/settings';
import { isAccurate, isNew } from '../core/summary/accuracy';
import type { Summary } from '../core/summary/summary';
import { calendar } from './assumptions';
import type { CrewMember } from './crew';

/** A visitor may come on any day of the week. */
const everyDay = [1, 2, 3, 4, 5, 6, 7];

/** What the parent sets down on the first day. */
export function settingUp(member: CrewMember): readonly Draft[] {
  const { id: child, name, edge, settings, ticked, ownSets, sets } = member;
  const [first] = sets;
  return [
    { kind: 'childAdded', child, name, edge },
    { kind: 'childSettingsChanged', child, changes: { ...settings, schoolDays: everyDay } },
    ...(ticked.length > 0 ? [{ kind: 'factsTicked', child, facts: ticked, known: true } as const] : []),
    ...ownSets.map(
      ({ id, name: named, facts }) => ({ kind: 'setMade', set: id, name: named, facts }) as const,
    ),
    ...(first === undefined ? [] : [{ kind: 'setStarted', child, set: first } as const]),
  ];
}

/** What the parent looks at in the evening. `daysLeft` counts the school days to come, today among them. */
export interface Evening {
  readonly summary: Summary;
  readonly settings: ChildSettings;
  readonly set: { readonly id: string; readonly facts: readonly FactId[] };
  readonly daysOnSet: number;
  readonly daysLeft: number;
}

const longestWithoutClock = 6;

/** The clock and the next set: on when the set is accurate (or has long been met), off again for a new one. */
export function evening(member: CrewMember, look: Evening): readonly Draft[] {
  const { id: child, sets, leastDays, clock } = member;
  const { settings, set, daysOnSet, daysLeft, summary } = look;
  const facts = new Set(set.facts);
  const accurate = isAccurate(summary, facts);
  const next = sets[sets.indexOf(set.id) + 1];
  const isThrough = daysOnSet >= leastDays && (accurate || settings.timed) && !isNew(summary, facts);
  if (next !== undefined && isThrough && daysLeft > calendar.settledDays) {
    return [
      { kind: 'setKept', child, set: set.id, kept: true },
      { kind: 'setStarted', child, set: next },
      ...(settings.timed
        ? [{ kind: 'childSettingsChanged', child, changes: { timed: false } } as const]
        : []),
    ];
  }
  if (clock === 'never' || settings.timed || !(accurate || daysOnSet >= longestWithoutClock)) return [];
  return [{ kind: 'childSettingsChanged', child, changes: { timed: true } }];
}
