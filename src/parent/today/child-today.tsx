import '../../ui/cloth.css';
import type { FactId } from '../../core/fact/fact';
import type { Child } from '../../core/household/household';
import type { ChildDay } from '../../core/plan/plan-day';
import type { Desk } from '../../state/desk';
import { WovenEdge } from '../../ui/woven-edge';
import { useActing } from '../acting';
import { setName } from '../children/set-list';
import { promptText } from '../marking/words';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import { listed } from '../words';
import { Needs } from './needs';
import { OnlyToday } from './only-today';
import { TodayReadings } from './today-readings';
import { daySentence, todayWords } from './words';

export interface ChildTodayProps {
  readonly desk: Desk;
  readonly child: Child;
}

/** One child's line, needs, changes for today and hand-over. */
export function ChildToday({ desk, child }: ChildTodayProps) {
  const acting = useActing();
  const household = desk.household.value;
  const day = desk.days.value.get(child.id) ?? null;
  const isBeingSat = desk.sitting.value.has(child.id);
  const lacksSet = day !== null && day.steps.length === 0 && day.needs.some(({ what }) => what === 'noSet');
  const hasNothing = lacksSet && day.sheets.length === 0;
  const isSpread = day?.steps.some((step) => step.what === 'sheet' && step.plan.spread) ?? false;
  return (
    <section class="card" aria-label={child.name} data-holds=".kept">
      <div class="child-line">
        <h2>{child.name}</h2>
        <div class="edge-thin">
          <WovenEdge edge={child.edge} height={14} />
        </div>
      </div>
      {!hasNothing && (
        <p>
          {isBeingSat && day?.sheets.length === 0
            ? todayWords.begun
            : daySentence(
                day,
                child.settings,
                household.settings.bandNames,
                setName(household, child.currentSet),
              )}
        </p>
      )}
      {day && <TrialToday day={day} of={child.trial?.order.length ?? 0} />}
      {day && <TodayReadings desk={desk} child={child} day={day} acting={acting} />}
      {day?.firstTry && <FirstTryList {...day.firstTry} />}
      {day && <Needs desk={desk} child={child} day={day} acting={acting} />}
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      <div class="actions">
        {!lacksSet && (
          <button type="button" class="main" onClick={() => desk.handOver(child.id)}>
            {todayWords.handOver(child.name)}
          </button>
        )}
        {isBeingSat && (
          <button type="button" onClick={() => acting.act(() => desk.openStop(child.id))}>
            {todayWords.stop}
          </button>
        )}
      </div>
      {isBeingSat && <p class="hint">{todayWords.stopped}</p>}
      {!lacksSet && (
        <OnlyToday
          desk={desk}
          child={child}
          hasSat={(day?.sheets.length ?? 0) > 0}
          isSpread={isSpread}
          acting={acting}
        />
      )}
    </section>
  );
}

/** What the first try found, for the parent. */
function FirstTryList({ yours, toTeach }: NonNullable<ChildDay['firstTry']>) {
  return (
    <p>
      {yours.length > 0 ? todayWords.firstTryYours(factsText(yours)) : todayWords.firstTryNone}{' '}
      {toTeach.length > 0 ? todayWords.firstTryTeach(factsText(toTeach)) : todayWords.firstTryAll}
    </p>
  );
}

function factsText(facts: readonly FactId[]): string {
  return listed(facts.map(promptText));
}

/** That the clock of a sheet still to be sat is drawn by lot. */
function TrialToday({ day, of }: { readonly day: ChildDay; readonly of: number }) {
  const sheet = day.steps.find((step) => step.what === 'sheet');
  if (!day.drawn || sheet?.what !== 'sheet') return null;
  const { trial } = sheet.plan;
  return <p class="hint">{trial ? todayWords.trialDay(trial.day + 1, of) : todayWords.trialMissed}</p>;
}
