import type { ComponentChildren } from 'preact';
import type { Child } from '../../core/household/household';
import type { ChildDay } from '../../core/plan/plan-day';
import type { Ruling } from '../../core/record/household-record';
import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { setName } from '../children/set-list';
import { ruledDraft } from '../marking/rule';
import { rulingText } from '../marking/words';
import { turnTo } from '../place';
import { childReading } from '../reading/child-reading';
import { mayProposeClock } from '../reading/said';
import { useRead } from '../reading/use-read';
import { SpreadProposal } from '../spread/spread-proposal';
import { DoubtfulSlips } from './doubtful-slips';
import { needsOfParent, type ParentNeed } from './parent-needs';
import { todayWords, waitedSentence } from './words';

export interface NeedsProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly day: ChildDay;
  readonly acting: Acting;
}

/** What waits for the parent; the child's day never does. */
export function Needs(props: NeedsProps) {
  const all = needsOfParent(props.child, props.day);
  const mayPropose = useMayPropose(
    props,
    all.some(({ what }) => what === 'proposeClock'),
  );
  const needs = all.filter(({ what }) => what !== 'proposeClock' || mayPropose);
  if (needs.length === 0) return null;
  return (
    <>
      <h3>{todayWords.needs}</h3>
      <ul class="bare needs">
        {needs.map((need) => (
          <li key={'sitting' in need ? `${need.what} ${need.sitting}` : need.what}>
            <OneNeed {...props} need={need} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Whether the readings let the clock be proposed, where the plan does by the count alone. */
function useMayPropose({ desk, child }: NeedsProps, isProposed: boolean): boolean {
  const household = desk.household.value;
  const history = desk.history.value;
  const may = useRead(
    function* () {
      if (!isProposed || history === null) return false;
      const reading = childReading(household, history, child);
      yield* reading.prepare('readiness', 'clockEffect', 'trial');
      return mayProposeClock(reading);
    },
    [household, history, child, isProposed],
  );
  return may ?? false;
}

function OneNeed({ desk, child, day, acting, need }: NeedsProps & { readonly need: ParentNeed }) {
  const rule = (sitting: Id, ruling: Ruling) => {
    const sat = day.sheets.find((sheet) => sheet.ruled.sat.id === sitting)?.ruled.sat;
    if (!sat) return;
    void acting.record(
      desk,
      [ruledDraft(sat, ruling)],
      rulingText(ruling, sat.prompts, () => child.name),
    );
  };
  const read = (sitting: Id) => (
    <button type="button" onClick={() => turnTo('marking', { sitting })}>
      {todayWords.read}
    </button>
  );
  switch (need.what) {
    case 'noSet':
      return (
        <Line says={todayWords.noSet(child.name)}>
          <button type="button" class="main" onClick={() => turnTo('children', { child: child.id })}>
            {todayWords.chooseSet}
          </button>
        </Line>
      );
    case 'spreadSat':
      return <SpreadProposal desk={desk} child={child} acting={acting} />;
    case 'rowsWaiting':
      return (
        <Line says={todayWords.rowsWaiting(need.rows)}>
          <button type="button" onClick={() => rule(need.sitting, { what: 'rows', rows: need.rows })}>
            {todayWords.sendRows(need.rows)}
          </button>
          <button type="button" onClick={() => rule(need.sitting, { what: 'rows', rows: 0 })}>
            {todayWords.waiveRows}
          </button>
          {read(need.sitting)}
        </Line>
      );
    case 'rowsStopped':
      return <Line says={todayWords.rowsStopped}>{read(need.sitting)}</Line>;
    case 'interrupted':
      return (
        <Line says={todayWords.interrupted}>
          {read(need.sitting)}
          <button type="button" onClick={() => rule(need.sitting, { what: 'bandAnyway' })}>
            {todayWords.giveBand}
          </button>
        </Line>
      );
    case 'doubtfulSlip':
      return <DoubtfulSlips desk={desk} acting={acting} slips={need.slips} />;
    case 'spokenCheck':
      return (
        <Line says={todayWords.spokenCheck(need.facts.length)}>
          <button type="button" onClick={() => turnTo('spoken', { child: child.id })}>
            {todayWords.openSpoken}
          </button>
        </Line>
      );
    case 'waited':
      return <p>{waitedSentence(need.waits)}</p>;
    case 'proposeClock':
      return (
        <Line says={todayWords.proposeClock(setName(desk.household.value, child.currentSet))}>
          <button
            type="button"
            onClick={() =>
              acting.record(
                desk,
                [{ kind: 'childSettingsChanged', child: child.id, changes: { timed: true } }],
                todayWords.clockIsOn,
              )
            }
          >
            {todayWords.turnClockOn}
          </button>
        </Line>
      );
  }
}

function Line({ says, children }: { readonly says: string; readonly children: ComponentChildren }) {
  return (
    <>
      <p>{says}</p>
      <div class="actions">{children}</div>
    </>
  );
}
