import { say } from '../../readings/sentences/say';
import { Figure } from '../chart/figure';
import { ShareChart } from '../chart/share-chart';
import { Said } from '../parts/said';
import type { CauseShare, CausesOverTime } from './cause-shares';
import { causeNames, overTimeWords } from './words';

export interface CausesSectionProps {
  readonly causes: CausesOverTime;
  readonly who: string;
}

/** Why answers were wrong: sentences, how often each mark was seen and what chance would give, the same as a table. */
export function CausesSection({ causes, who }: CausesSectionProps) {
  const { wrong, skipped, slips, accepted, shares } = causes;
  const { columns } = overTimeWords;
  const first = shares?.[0];
  return (
    <section>
      <h2>{overTimeWords.causes}</h2>
      <p>
        {overTimeWords.inAll(wrong, skipped)} {overTimeWords.ruledIn(slips, accepted)}
      </p>
      {!shares && <p>{overTimeWords.tooFewWrong}</p>}
      {worthSaying(shares ?? []).map((share) => (
        <Said
          key={share.flag}
          {...say({ kind: 'errorLift', what: causeNames[share.flag], ...counted(share) }, who)}
        />
      ))}
      {shares && first && (
        <Figure
          title={overTimeWords.causesTitle}
          legend={
            <>
              <span>{overTimeWords.chanceNote}</span> <span>{overTimeWords.overlap}</span>
            </>
          }
          table={() => ({
            columns: [columns.cause, columns.seen, columns.share, columns.chance, columns.lift],
            rows: shares.map(({ flag, hits, of, expected, lift }) => [
              causeNames[flag],
              `${hits}`,
              `${Math.round((100 * hits) / of)} in 100`,
              expected.toFixed(1),
              lift === null ? '–' : lift.toFixed(1),
            ]),
          })}
        >
          <ShareChart
            says={overTimeWords.causesSay(causeNames[first.flag], first.hits, first.of)}
            rows={shares.map(({ flag, hits, expected }) => ({
              label: causeNames[flag],
              value: hits,
              chance: expected,
            }))}
          />
        </Figure>
      )}
    </section>
  );
}

const mostSaid = 3;

/** The marks that blind chance doesn't explain, the commonest first; a neighbour in the table is in the tables as well. */
function worthSaying(shares: readonly CauseShare[]): readonly CauseShare[] {
  const beyond = shares.filter(isBeyondChance);
  const hasNeighbours = beyond.some(({ flag }) => flag === 'operand');
  return beyond.filter(({ flag }) => flag !== 'table' || !hasNeighbours).slice(0, mostSaid);
}

/** One look at a dozen marks: each at a twelfth of one in twenty. */
function isBeyondChance({ pMore }: CauseShare): boolean {
  return pMore < 0.05 / 12;
}

function counted({ hits, of, expected, pMore }: CauseShare) {
  return { hits, of, expected, pMore };
}
