import { type FactId, parseFact } from '../core/fact/fact';
import { writtenFact } from '../core/fact/written';
import type { Dye } from '../ui/dye';
import { Stitch, stitchSide } from '../ui/stitch';
import { Action } from './action';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface YoursProps {
  readonly facts: readonly FactId[];
  readonly dye: Dye;
  readonly edge: number;
  readonly onGoOn: () => void;
  readonly onGrownUps: () => void;
}

const across = 5;
const cell = { width: 54, height: 44 } as const;
const margin = 16;

/** After a first try: what the child has already, each fact under its stitch. Nothing is counted. */
export function Yours({ facts, dye, edge, onGoOn, onGrownUps }: YoursProps) {
  const shown = facts.flatMap((id) => parseFact(id) ?? []);
  const columns = Math.min(across, Math.max(1, shown.length));
  const width = columns * cell.width + 2 * margin;
  const height = Math.ceil(shown.length / across) * cell.height + 2 * margin;
  return (
    <StepScreen
      title={words.yours}
      edge={edge}
      onGrownUps={onGrownUps}
      actions={<Action onPress={onGoOn}>{words.goOn}</Action>}
    >
      <svg class="drawing" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={told(facts)}>
        <rect class="patch" x="1" y="1" width={width - 2} height={height - 2} rx="3" />
        <rect class="seam" x="7" y="7" width={width - 14} height={height - 14} />
        {shown.map((fact, index) => {
          const x = margin + ((index % across) + 0.5) * cell.width;
          const y = margin + Math.floor(index / across) * cell.height;
          return (
            <g key={fact.id}>
              <g transform={`translate(${x - stitchSide / 2} ${y + 2})`}>
                <Stitch op={fact.op} state="stitch" seed={index * 7919} dye={dye} />
              </g>
              <text x={x} y={y + 37} font-size="13">
                {writtenFact(fact)}
              </text>
            </g>
          );
        })}
      </svg>
    </StepScreen>
  );
}

function told(facts: readonly FactId[]): string {
  return facts
    .flatMap((id) => parseFact(id) ?? [])
    .map(writtenFact)
    .join(', ');
}
