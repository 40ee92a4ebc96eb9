import type { Child } from '../../core/household/household';
import type { ChildDay } from '../../core/plan/plan-day';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { Said } from '../parts/said';
import { turnTo } from '../place';
import { childReading } from '../reading/child-reading';
import {
  moreTime,
  saidBesideCount,
  saidOfClockCost,
  saidOfClockTooSoon,
  saidOfReadiness,
} from '../reading/said';
import { useRead } from '../reading/use-read';
import { MoveOn } from './move-on';
import { todayWords } from './words';

export interface TodayReadingsProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly day: ChildDay;
  readonly acting: Acting;
}

/** What today's sheet says, and what the readings propose: each a sentence with its evidence and one tap. */
export function TodayReadings({ desk, child, day, acting }: TodayReadingsProps) {
  const household = desk.household.value;
  const history = desk.history.value;
  const sheet = day.sheets.at(-1)?.ruled.sat.id ?? null;
  const isTimed = plansClock(day) || child.settings.timed;
  const read = useRead(
    function* () {
      if (!history) return null;
      const reading = childReading(household, history, child);
      yield* reading.prepare('readiness', 'clockEffect', 'trial');
      const more = isTimed ? moreTime(reading, sheet) : null;
      return {
        said: sheet === null ? [] : saidBesideCount(reading, sheet),
        keypad: more?.said ?? null,
        restoringS: more?.restoringS ?? null,
        readiness: reading.readiness,
        ready: saidOfReadiness(reading)[0] ?? null,
        cost: child.settings.timed ? saidOfClockCost(reading, sheet) : [],
        tooSoon: isTimed && sheet === null ? saidOfClockTooSoon(reading) : null,
      };
    },
    [household, history, child, sheet, isTimed],
  );
  if (!read) return null;
  const { said, keypad, restoringS, tooSoon, cost } = read;
  const change = (changes: Partial<Child['settings']>, says: string) =>
    acting.record(desk, [{ kind: 'childSettingsChanged', child: child.id, changes }], says);
  return (
    <>
      {said.map((one) => (
        <Said key={one.text} {...one} />
      ))}
      {!tooSoon && child.settings.timed && cost.length > 0 && (
        <>
          {cost.map((one) => (
            <Said key={one.text} {...one} />
          ))}
          <div class="actions">
            <button type="button" onClick={() => change({ timed: false }, todayWords.clockIsOff)}>
              {todayWords.turnClockOff}
            </button>
            <button type="button" class="quiet" onClick={() => turnTo('overTime', { child: child.id })}>
              {todayWords.findOut}
            </button>
          </div>
        </>
      )}
      {tooSoon && (
        <>
          <Said {...tooSoon} />
          {child.settings.timed && (
            <div class="actions">
              <button type="button" onClick={() => change({ timed: false }, todayWords.clockIsOff)}>
                {todayWords.turnClockOff}
              </button>
            </div>
          )}
        </>
      )}
      {keypad && <Said {...keypad} />}
      {restoringS !== null && (
        <div class="actions">
          <button
            type="button"
            onClick={() => change({ allowanceS: restoringS }, todayWords.allowedNow(restoringS))}
          >
            {todayWords.giveSeconds(restoringS)}
          </button>
        </div>
      )}
      <MoveOn desk={desk} child={child} readiness={read.readiness} said={read.ready} acting={acting} />
    </>
  );
}

function plansClock({ steps }: ChildDay): boolean {
  return steps.some((step) => step.what === 'sheet' && step.plan.clock !== null);
}
