import '../../ui/cloth.css';
import type { Signal } from '@preact/signals';
import { WovenEdge } from '../../ui/woven-edge';
import { setupWords } from '../setup/words';

export interface EdgeChoiceProps {
  readonly edge: Signal<number>;
  readonly name: string;
}

/** A child's woven edge, drawn again until it pleases. */
export function EdgeChoice({ edge, name }: EdgeChoiceProps) {
  return (
    <fieldset>
      <legend>{setupWords.edge(name)}</legend>
      <div class="edge-shown">
        <WovenEdge edge={edge.value} height={36} />
      </div>
      <button
        type="button"
        onClick={() => {
          edge.value += 1;
        }}
      >
        {setupWords.anotherEdge}
      </button>
      <p class="only-heard" role="status">
        {setupWords.edgeNumber(edge.value + 1)}
      </p>
    </fieldset>
  );
}
