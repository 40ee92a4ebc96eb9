import { FoldedCloth } from '../ui/folded-cloth';
import { Shell } from './shell';
import './whose.css';
import { words } from './words';

/** A child as the others know it: a name and an edge. */
export interface ChildCloth {
  readonly id: string;
  readonly name: string;
  readonly edge: number;
}

export interface WhoseProps {
  readonly children: readonly ChildCloth[];
  readonly onChoose: (child: string) => void;
  readonly onGrownUps: () => void;
}

/** *Whose cloth?*: everyone's, folded in a stack. */
export function Whose({ children, onChoose, onGrownUps }: WhoseProps) {
  return (
    <Shell name="step-screen" onGrownUps={onGrownUps} isKnotNamed>
      <div class="step whose">
        <h1>{words.whose}</h1>
        <ul class="stack" style={{ '--cloths': `${children.length}` }}>
          {children.map(({ id, name, edge }, index) => (
            <li key={id} style={{ '--shift': `${((index * 5) % 7) - 3}` }}>
              <FoldedCloth name={name} edge={edge} onChoose={() => onChoose(id)} />
            </li>
          ))}
        </ul>
      </div>
    </Shell>
  );
}
