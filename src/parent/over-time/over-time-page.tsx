import { useSignal } from '@preact/signals';
import type { Id } from '../../core/record/stamp';
import type { Stretch } from '../../readings/rates/trend';
import type { Desk } from '../../state/desk';
import { DayChart } from '../chart/day-chart';
import { Figure } from '../chart/figure';
import { ChildTabs, chosenChild } from '../children/child-tabs';
import { setName } from '../children/set-list';
import { Choice } from '../parts/choice';
import { Heading } from '../parts/heading';
import { Said } from '../parts/said';
import { shortDay } from '../parts/when';
import { childReading } from '../reading/child-reading';
import { saidOfKeypad } from '../reading/said';
import { useRead } from '../reading/use-read';
import { TrialSection } from '../trial/trial-section';
import { insideWords } from '../words';
import { causesOverTime } from './cause-shares';
import { CausesSection } from './causes-section';
import { ClockSection } from './clock-section';
import { bandLines, countsAtEase } from './counts';
import { interruptedSheets } from './interrupted';
import { type DayMinutes, minutesADay } from './minutes';
import { RatesSection } from './rates-section';
import { cutStretches, isWithin, type Span } from './span';
import { StretchChart } from './stretch-chart';
import { thinkTimes } from './think-times';
import { TrendSaid } from './trend-said';
import { overTimeWords } from './words';

/** What changes from sheet to sheet, and what the clock has to do with it. */
export function OverTimePage({ desk }: { readonly desk: Desk }) {
  const child = chosenChild(desk.household.value);
  return (
    <>
      <Heading>{child ? `${overTimeWords.title}: ${child.name}` : overTimeWords.title}</Heading>
      <ChildTabs desk={desk} page="overTime" />
      {child && <OverTimeOf key={child.id} desk={desk} childId={child.id} />}
    </>
  );
}

function OverTimeOf({ desk, childId }: { readonly desk: Desk; readonly childId: Id }) {
  const span = useSignal<Span>(84);
  const household = desk.household.value;
  const history = desk.history.value;
  const read = useRead(
    function* () {
      const child = household.children.find(({ id }) => id === childId);
      if (!history || !child) return null;
      const reading = childReading(household, history, child);
      yield* reading.prepare('rates', 'clockEffect', 'trial');
      const isShown = isWithin(span.value, reading.log.sats.at(-1)?.ruled.sat.day ?? '');
      const sats = reading.log.sats.filter(({ ruled }) => isShown(ruled.sat.day));
      const causes = causesOverTime(reading, isShown);
      yield;
      const atEase = countsAtEase(reading.log.sats);
      yield;
      const think = thinkTimes(reading.log.sats);
      yield;
      return {
        reading,
        sheets: sats.filter(({ ruled }) => ruled.sat.purpose === 'sheet').length,
        isShown,
        byBell: reading.rates.find(({ rate }) => rate === 'count')?.stretches ?? [],
        atEase,
        think,
        interrupted: {
          with: interruptedSheets(sats, true),
          without: interruptedSheets(sats, false),
        },
        minutes: minutesADay(sats),
        causes,
        keypad: saidOfKeypad(reading),
      };
    },
    [household, history, childId, span.value],
  );
  if (!read) return <p role="status">{insideWords.historyLoading}</p>;
  if (read.sheets === 0) return <p>{overTimeWords.nobody}</p>;
  const { reading, byBell, atEase, think, isShown } = read;
  const shown = (stretches: readonly Stretch[]) => cutStretches(stretches, isShown);
  const name = (set: Id | null) => setName(household, set);
  const who = reading.child.name;
  const { limits } = reading.child.settings;
  const longest = Math.max(
    0,
    ...[...byBell, ...atEase].flatMap(({ points }) => points.map(({ conditions }) => conditions.length)),
    ...[...read.interrupted.with, ...read.interrupted.without].map(({ length }) => length),
  );
  return (
    <>
      <div class="no-print">
        <Choice
          legend={overTimeWords.howFarBack}
          inRow
          options={spans.map((value) => ({ value: value ?? 0, label: overTimeWords.spans[value ?? 0] }))}
          value={span.value ?? 0}
          onChoose={(value) => {
            span.value = spans.find((one) => (one ?? 0) === value) ?? null;
          }}
        />
      </div>
      <section>
        <h2>{overTimeWords.counts}</h2>
        <TrendSaid of="count" withClock={true} stretches={byBell} who={who} />
        <p class="hint">{overTimeWords.countsNote}</p>
        <div class="charts">
          <StretchChart
            title={overTimeWords.byBell}
            stretches={shown(byBell)}
            mark="dot"
            interrupted={read.interrupted.with}
            levels={bandLines(shown(byBell), limits, household.settings.bandNames)}
            isCount
            top={longest}
            setName={name}
          />
          <StretchChart
            title={overTimeWords.atEase}
            stretches={shown(atEase)}
            interrupted={read.interrupted.without}
            mark="diamond"
            isCount
            top={longest}
            setName={name}
          />
        </div>
      </section>
      <section>
        <h2>{overTimeWords.think}</h2>
        {read.keypad && <Said {...read.keypad} />}
        <TrendSaid of="think" withClock={false} stretches={think} who={who} />
        <p class="hint">{overTimeWords.thinkNote}</p>
        {think.length === 0 && <p>{overTimeWords.noThink}</p>}
        <StretchChart
          title={overTimeWords.thinkTitle}
          stretches={shown(think)}
          mark="diamond"
          setName={name}
        />
      </section>
      <CausesSection causes={read.causes} who={who} />
      <ClockSection effect={reading.clockEffect} who={who} />
      <TrialSection desk={desk} reading={reading} />
      <RatesSection rates={reading.rates} shown={shown} setName={name} who={who} />
      <MinutesSection days={read.minutes} />
    </>
  );
}

const spans: readonly Span[] = [84, 365, null];

function MinutesSection({ days }: { readonly days: readonly DayMinutes[] }) {
  const { columns, minutesTitle } = overTimeWords;
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return null;
  const values = days.map(({ minutes }) => minutes);
  const says = overTimeWords.says(
    minutesTitle,
    days.length,
    shortDay(first.day),
    shortDay(last.day),
    Math.min(...values).toFixed(1),
    Math.max(...values).toFixed(1),
  );
  return (
    <section>
      <h2>{overTimeWords.minutes}</h2>
      <Figure
        title={minutesTitle}
        table={() => ({
          columns: [columns.day, columns.minutes, columns.sittings],
          rows: days
            .map(({ day, minutes, sittings }) => [shortDay(day), minutes.toFixed(1), `${sittings}`])
            .toReversed(),
        })}
      >
        <DayChart
          says={says}
          points={days.map(({ day, minutes }) => ({ day, value: minutes, mark: 'dot' }))}
          bars
        />
      </Figure>
    </section>
  );
}
