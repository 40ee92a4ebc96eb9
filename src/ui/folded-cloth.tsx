import { WovenEdge } from './woven-edge';
import './folded-cloth.css';

export interface FoldedClothProps {
  readonly name: string;
  readonly edge: number;
  readonly onChoose: () => void;
}

/** A child's cloth, folded, with its own edge: the whole of it is the button. */
export function FoldedCloth({ name, edge, onChoose }: FoldedClothProps) {
  return (
    <button type="button" class="folded" onClick={onChoose}>
      <span class="folded-name">{name}</span>
      <WovenEdge edge={edge} height={32} />
    </button>
  );
}
