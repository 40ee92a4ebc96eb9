import type { FactId } from '../../core/fact/fact';
import { useActing } from '../acting';
import { FactPicker } from '../fact-grid/fact-picker';
import { knownWords } from '../fact-grid/words';
import { Trouble } from '../parts/trouble';
import type { OneChildProps } from './name-and-edge';
import { childrenWords } from './words';

/** What is ticked as known already. */
export function KnownFacts({ desk, child }: OneChildProps) {
  const { act, trouble } = useActing();
  const mark = (facts: readonly FactId[], known: boolean) =>
    act(() => desk.record([{ kind: 'factsTicked', child: child.id, facts, known }]));
  return (
    <details>
      <summary>{childrenWords.known}</summary>
      <p class="hint">{childrenWords.knownLead(child.name)}</p>
      <Trouble sentence={trouble} />
      <FactPicker marked={child.ticked} words={knownWords} onMark={mark} offersTurnArounds />
    </details>
  );
}
