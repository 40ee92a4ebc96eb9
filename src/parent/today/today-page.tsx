import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import { isWeekOver } from '../monday/school-week';
import { Heading } from '../parts/heading';
import { longDay } from '../parts/when';
import { turnTo } from '../place';
import { ChildToday } from './child-today';
import { todayWords } from './words';

/** Each child in one line, with what needs the parent and what can be changed for today. */
export function TodayPage({ desk }: { readonly desk: Desk }) {
  const children = desk.household.value.children.filter((child) => !child.archived);
  return (
    <>
      <Heading>
        {todayWords.title}, {longDay(desk.today.value)}
      </Heading>
      {children.length === 0 && <p>{todayWords.allArchived}</p>}
      {children.map((child) => (
        <ChildToday key={child.id} desk={desk} child={child} />
      ))}
      {children.some(({ id }) => hasBand(desk, id)) && (
        <p class="hint">{todayWords.bandsMean(desk.household.value.settings.bandNames)}</p>
      )}
      {children.some((child) => isWeekOver(desk.today.value, child.settings.schoolDays)) && (
        <div class="actions">
          <button type="button" onClick={() => turnTo('monday')}>
            {todayWords.monday}
          </button>
        </div>
      )}
      {children.length > 1 && (
        <div class="actions">
          <button type="button" onClick={() => desk.handOver(null)}>
            {todayWords.whose}
          </button>
        </div>
      )}
    </>
  );
}

function hasBand(desk: Desk, child: Id): boolean {
  return desk.days.value.get(child)?.sheets.some(({ marked }) => marked.band !== null) ?? false;
}
