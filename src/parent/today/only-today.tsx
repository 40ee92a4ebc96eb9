import type { Child } from '../../core/household/household';
import type { DayChange } from '../../core/record/household-record';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { partWords } from '../parts/words';
import { sentence } from '../words';
import { changeSentences, laterNames, laterSteps, todayWords } from './words';

export interface OnlyTodayProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly hasSat: boolean;
  /** A spread has its own length and no clock. */
  readonly isSpread: boolean;
  readonly acting: Acting;
}

const shorterLengths: readonly number[] = [5, 10, 15];

/** What holds for today alone, in two taps, and how to take it back. */
export function OnlyToday({ desk, child, hasSat, isSpread, acting }: OnlyTodayProps) {
  const day = desk.today.value;
  const change = desk.history.value?.children.get(child.id)?.changes.get(day) ?? {};
  // During a clock trial a day is by itself what was drawn for it.
  const drawn = desk.days.value.get(child.id)?.drawn ?? null;
  const usual = { ...child.settings, timed: drawn ? drawn.kind === 'thread' : child.settings.timed };
  const inForce = changeSentences(change, usual, hasSat);
  const steps = desk.days.value.get(child.id)?.steps ?? [];
  const handable = laterSteps(steps);
  const isFree = desk.days.value.get(child.id)?.isFree ?? false;
  const isTimed = change.timed ?? usual.timed;
  const length = change.length ?? child.settings.length;

  const record = async (next: DayChange, says: string) => {
    const drafts = [{ kind: 'dayChanged', child: child.id, day, change: next }] as const;
    // Its Undo stands beside the change for as long as it holds.
    if (await acting.act(() => desk.record(drafts))) acting.say(says);
  };

  return (
    <>
      {inForce.length > 0 && (
        <ul class="bare" aria-label={todayWords.onlyFor(child.name)}>
          {inForce.map(({ says, takeBack }) => (
            <li key={says}>
              {says}{' '}
              <button
                type="button"
                class="link no-print"
                aria-label={`${todayWords.undo}: ${says}`}
                onClick={() => record(takeBack, partWords.takenBack)}
              >
                {todayWords.undo}
              </button>
            </li>
          ))}
        </ul>
      )}
      {(!hasSat || handable.length > 0) && !change.skip && (
        <details class="no-print">
          <summary>{todayWords.only}</summary>
          <div class="actions">
            {isFree && (
              <button type="button" onClick={() => record({ school: true }, todayWords.keptToday)}>
                {todayWords.school}
              </button>
            )}
            {!isSpread && !hasSat && (
              <button type="button" onClick={() => record({ timed: !isTimed }, todayWords.keptToday)}>
                {isTimed ? todayWords.withoutClock : todayWords.withClock}
              </button>
            )}
            {!isSpread &&
              !hasSat &&
              shorterLengths
                .filter((facts) => facts < length)
                .map((facts) => (
                  <button
                    key={facts}
                    type="button"
                    onClick={() => record({ length: facts }, todayWords.keptToday)}
                  >
                    {todayWords.shorter(facts)}
                  </button>
                ))}
            {!hasSat && !isFree && (
              <button type="button" onClick={() => record({ skip: true }, todayWords.keptToday)}>
                {todayWords.skip}
              </button>
            )}
          </div>
          {handable.length > 0 && (
            <>
              <p>{todayWords.anotherDay}</p>
              <div class="actions">
                {handable.map((step) => (
                  <button
                    key={step}
                    type="button"
                    onClick={() => record({ later: [...(change.later ?? []), step] }, todayWords.keptToday)}
                  >
                    {sentence(laterNames[step])}
                  </button>
                ))}
              </div>
            </>
          )}
          <p class="hint">{todayWords.endsAtNight}</p>
        </details>
      )}
    </>
  );
}
