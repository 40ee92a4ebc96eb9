import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Child } from '../../../core/household/household';
import type { Desk } from '../../../state/desk';
import { useActing } from '../../acting';
import { draft, dropDraft } from '../../drafts';
import { Done } from '../../parts/done';
import { Trouble } from '../../parts/trouble';
import type { Span } from './term';
import { reportWords } from './words';

export interface RemarksProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly span: Span;
}

const longest = 4000;

/** The parent's own words on a term: a field on the screen, paragraphs on paper. */
export function Remarks({ desk, child, span: { from, to } }: RemarksProps) {
  const id = useId();
  const key = `remarks-${child.id}-${from}-${to}`;
  const kept = child.remarks.find((remark) => remark.from === from && remark.to === to)?.text ?? '';
  const text = draft(key, kept);
  const fault = useSignal<string | null>(null);
  const acting = useActing();

  async function keep(event: Event) {
    event.preventDefault();
    const typed = text.value.trim();
    fault.value = typed.length > longest ? reportWords.tooLong : null;
    if (fault.value !== null) return;
    const drafts = [{ kind: 'remarkWritten', child: child.id, from, to, text: typed } as const];
    if (await acting.record(desk, drafts, reportWords.remarksKept(child.name))) dropDraft(key);
  }

  return (
    <section>
      {kept !== '' && <h2>{reportWords.remarksTitle}</h2>}
      {kept.split(/\n+/).map((line, index) => (
        <p key={`${index} ${line}`}>{line}</p>
      ))}
      <form class="no-print" onSubmit={keep} noValidate>
        <div class="field">
          <label for={id}>{reportWords.remarks(child.name)}</label>
          <p class="hint" id={`${id}-hint`}>
            {reportWords.remarksHint}
          </p>
          <textarea
            id={id}
            rows={5}
            class="report-remarks"
            aria-describedby={`${id}-hint`}
            value={text}
            onInput={({ currentTarget }) => {
              text.value = currentTarget.value;
            }}
          />
          {fault.value && <p class="fault">{fault.value}</p>}
        </div>
        <div class="actions">
          <button type="submit" aria-disabled={acting.isBusy.value}>
            {reportWords.keep}
          </button>
        </div>
      </form>
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
    </section>
  );
}
