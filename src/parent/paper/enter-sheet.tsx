import { signal, useSignal } from '@preact/signals';
import { formatISO, parseISO, subDays } from 'date-fns';
import { useId } from 'preact/hooks';
import { parseFact } from '../../core/fact/fact';
import { writtenFact } from '../../core/fact/written';
import { noHistory } from '../../core/household/history';
import type { Child } from '../../core/household/household';
import { codeOf } from '../../core/paper/paper-code';
import { paperSat } from '../../core/paper/paper-sat';
import type { Day } from '../../core/record/stamp';
import type { Acting } from '../acting';
import { setName } from '../children/set-list';
import { Tick } from '../parts/tick';
import { shortDay } from '../parts/when';
import type { FoundSheet } from './find-sheet';
import { MarkGrid } from './mark-grid';
import { noMarks, reachedTo, resultOf, written, writtenIn } from './marks';
import type { PaperPartProps } from './paper-page';
import { dropResult, heldResult } from './paper-place';
import { hasSheetOn, planOnPaper } from './paper-plan';
import { satSentence } from './sat-sentence';
import { Select } from './select';
import { resultWords } from './words';

export interface EnterSheetProps extends PaperPartProps {
  readonly found: FoundSheet;
  readonly acting: Acting;
  readonly onClose: () => void;
}

/** A sheet of the last two weeks can be entered: what is older is no longer in anybody's hands. */
const daysBack = 14;

/** A sheet from paper read off: how far by the bell, which were wrong, and what was written where that is wanted. */
export function EnterSheet({ desk, history, found: { sheet }, acting, onClose }: EnterSheetProps) {
  const household = desk.household.value;
  const today = desk.today.value;
  const children = household.children.filter(({ id, archived }) => id === sheet.child || !archived);
  // Printed ahead, it was still done by today.
  const isAhead = sheet.day > today;
  const { whose, day, isTimed, marks } = heldResult(sheet, () => {
    const onDay = isAhead ? today : sheet.day;
    const own = children.find(({ id }) => id === sheet.child) ?? children[0];
    const isTimedThen = own ? isTimedOn(own, onDay) : false;
    return {
      whose: signal(own?.id ?? ''),
      day: signal(onDay),
      isTimed: signal(isTimedThen),
      marks: signal(noMarks(sheet.facts, isTimedThen)),
    };
  });
  const child = children.find(({ id }) => id === whose.value);
  const at = useSignal(isTimed.value ? sheet.facts.length - 1 : 0);
  if (!child) return null;

  function isTimedOn({ id, settings }: Child, onDay: Day): boolean {
    return history.children.get(id)?.changes.get(onDay)?.timed ?? settings.timed;
  }
  function turnClock(isOn: boolean) {
    isTimed.value = isOn;
    marks.value = reachedTo(marks.value, isOn ? null : sheet.facts.length);
  }

  const isSecond = hasSheetOn(day.value, history.children.get(child.id) ?? noHistory);
  const result = resultOf(marks.value);
  const sat =
    result &&
    paperSat(planOnPaper(sheet, child, isTimed.value, isSecond), result, desk.startOnPaper(day.value));
  const says = sat ? satSentence(sat, child.settings, household.settings.bandNames) : '';

  function close() {
    dropResult(sheet);
    onClose();
  }
  async function keep() {
    if (sat && (await acting.record(desk, [sat], resultWords.kept(says)))) close();
  }

  return (
    <section class="enter" aria-label={codeOf(sheet)}>
      <h2>
        {resultWords.sheet(child.name, setName(household, sheet.set), sheet.facts.length)}{' '}
        <span class="hint code">{codeOf(sheet)}</span>
      </h2>
      <div class="enter-how">
        {sheet.child === '' && children.length > 1 && (
          <Select
            label={resultWords.whose}
            value={child.id}
            options={children.map(({ id, name }) => [id, name])}
            onChoose={(id) => {
              whose.value = id;
              const other = children.find((one) => one.id === id);
              if (other) turnClock(isTimedOn(other, day.value));
            }}
          />
        )}
        <Select
          label={resultWords.day}
          value={day.value}
          options={daysTo(today, day.value).map((one) => [
            one,
            one === today ? resultWords.today(shortDay(one)) : shortDay(one),
          ])}
          onChoose={(one) => {
            day.value = one;
          }}
        />
        <Tick label={resultWords.clock(child.settings.allowanceS)} isOn={isTimed.value} onTurn={turnClock} />
      </div>
      {isSecond && <p class="hint">{resultWords.second}</p>}
      <p class="enter-says" role="status">
        {marks.value.reached === null
          ? isTimed.value
            ? resultWords.tapReached
            : resultWords.tapDone
          : resultWords.tapWrong}
      </p>
      <MarkGrid label={codeOf(sheet)} prompts={sheet.facts} state={marks} at={at} isFocused />
      <div class="enter-foot">
        {marks.value.reached === null ? (
          <button
            type="button"
            onClick={() => {
              marks.value = reachedTo(marks.value, sheet.facts.length);
            }}
          >
            {resultWords.all(sheet.facts.length)}
          </button>
        ) : (
          <>
            <Wrote sheet={sheet.facts} state={marks} at={at.value} />
            <button
              type="button"
              class="quiet"
              onClick={() => {
                marks.value = reachedTo(marks.value, null);
              }}
            >
              {isTimed.value ? resultWords.farther : resultWords.notDone}
            </button>
          </>
        )}
      </div>
      <p class="enter-result" role="status">
        {says}
      </p>
      <div class="actions">
        <button type="button" class="main" aria-disabled={!sat || acting.isBusy.value} onClick={keep}>
          {resultWords.keep}
        </button>
        <button type="button" class="quiet" onClick={close}>
          {resultWords.close}
        </button>
      </div>
      <p class="hint by-keys">{resultWords.keys}</p>
    </section>
  );
}

interface WroteProps {
  readonly sheet: FoundSheet['sheet']['facts'];
  readonly state: { value: ReturnType<typeof noMarks> };
  readonly at: number;
}

/** What was written in the place tapped last, where it is wrong. */
function Wrote({ sheet, state, at }: WroteProps) {
  const id = useId();
  const fact = parseFact(sheet[at] ?? '');
  if (!fact || state.value.marks.get(at)?.is !== 'wrong') return null;
  return (
    <span class="wrote">
      <label for={id}>{resultWords.wrote(writtenFact(fact))}</label>
      <input
        id={id}
        type="text"
        inputMode="numeric"
        autocomplete="off"
        value={writtenIn(state.value, at)}
        onInput={({ currentTarget }) => {
          const digits = currentTarget.value.replace(/\D/g, '').slice(0, 4);
          state.value = written(state.value, sheet, at, digits);
          currentTarget.value = digits;
        }}
      />
    </span>
  );
}

/** Today and the days before it, and the day chosen where it is farther back. */
function daysTo(today: Day, chosen: Day): readonly Day[] {
  const days = Array.from({ length: daysBack }, (_, back) =>
    formatISO(subDays(parseISO(today), back), { representation: 'date' }),
  );
  return days.includes(chosen) ? days : [...days, chosen];
}
