import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { ruledDraft } from '../marking/rule';
import type { DoubtfulSlip } from './parent-needs';
import './slips.css';
import { todayWords } from './words';

export interface DoubtfulSlipsProps {
  readonly desk: Desk;
  readonly acting: Acting;
  readonly slips: readonly DoubtfulSlip[];
}

/** Each to be ruled in one tap; nothing has to be. */
export function DoubtfulSlips({ desk, acting, slips }: DoubtfulSlipsProps) {
  const list = useRef<HTMLUListElement>(null);
  const hasRuled = useRef(false);
  // The row that was ruled is gone, and with it the focus: it goes on to the next.
  useLayoutEffect(() => {
    if (hasRuled.current) list.current?.querySelector('button')?.focus();
    hasRuled.current = false;
  }, [slips.length]);
  function rule({ sat, place, fact }: DoubtfulSlip, slip: boolean) {
    hasRuled.current = true;
    const ruling = { what: 'slip', place, slip } as const;
    void acting.record(desk, [ruledDraft(sat, ruling)], todayWords.ruledSlip(fact, slip));
  }
  return (
    <>
      <p>{todayWords.doubtfulSlip(slips.length)}</p>
      <ul class="bare slips" ref={list}>
        {slips.map((one) => (
          <li key={`${one.sat.id} ${one.place}`}>
            <span>{todayWords.slipRow(one.fact, one.given, one.looksLike)}</span>
            <span class="slip-choice">
              <button type="button" aria-label={todayWords.slipOf(one.fact)} onClick={() => rule(one, true)}>
                {todayWords.slip}
              </button>
              <button
                type="button"
                aria-label={todayWords.miscalculationOf(one.fact)}
                onClick={() => rule(one, false)}
              >
                {todayWords.miscalculation}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <p class="hint">{todayWords.slipMeans}</p>
    </>
  );
}
