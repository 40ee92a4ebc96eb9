import { useSignal } from '@preact/signals';
import type { Fact } from '../../core/fact/fact';
import { isLineFit, longestLine } from '../../core/strategy/own-line';
import { strategyFor } from '../../core/strategy/strategy-for';
import { strategyLine } from '../../core/strategy/words';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { draft, dropDraft } from '../drafts';
import { Done } from '../parts/done';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { factsWords } from './words';

export interface OwnLineProps {
  readonly desk: Desk;
  readonly fact: Fact;
  /** Facts on which the tool's strategy may rest. */
  readonly had: ReadonlySet<string>;
}

/** The line shown with a fact when it is new: the tool's, or the parent's own. */
export function OwnLine({ desk, fact, had }: OwnLineProps) {
  const acting = useActing();
  const fault = useSignal<string | null>(null);
  const own = desk.household.value.lines.get(fact.id) ?? null;
  const key = `own-line-${fact.id}`;
  const typed = draft(key, own ?? '');
  const tools = strategyLine(strategyFor(fact, ({ id }) => had.has(id)));

  async function keep(event: Event) {
    event.preventDefault();
    const line = typed.value.trim();
    fault.value = isLineFit(line) ? null : faultOf(line);
    if (fault.value !== null) return;
    await write(line, factsWords.lineKept(line));
  }

  async function write(line: string | null, says: string) {
    if (await acting.record(desk, [{ kind: 'lineWritten', fact: fact.id, line }], says)) dropDraft(key);
  }

  return (
    <form class="own-line no-print" onSubmit={keep} noValidate data-holds=".kept:not(:empty)">
      <h4>{factsWords.way}</h4>
      <p>{tools === null ? factsWords.noLine : factsWords.toolLine(tools)}</p>
      <Field
        label={factsWords.ownLine}
        hint={factsWords.ownHint(longestLine)}
        value={typed}
        fault={fault.value}
        wide
      />
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      <div class="actions">
        <button type="submit">{factsWords.keepLine}</button>
        {own !== null && (
          <button type="button" class="quiet" onClick={() => write(null, factsWords.lineGone)}>
            {factsWords.toolBack}
          </button>
        )}
      </div>
    </form>
  );
}

function faultOf(line: string): string {
  return line === '' ? factsWords.lineEmpty : factsWords.lineLong(longestLine);
}
