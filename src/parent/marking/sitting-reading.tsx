import type { History } from '../../core/household/history';
import type { Household } from '../../core/household/household';
import { bandInFirst, rightInFirst } from '../../core/marking/band-in-first';
import type { ChildSettings } from '../../core/record/settings';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { findChild, nameOf } from '../children/name-of';
import { setName } from '../children/set-list';
import { Heading } from '../parts/heading';
import { Said } from '../parts/said';
import { saidWords } from '../parts/said-words';
import { Trouble } from '../parts/trouble';
import { longDay } from '../parts/when';
import { turnTo } from '../place';
import { causesOf } from '../reading/causes';
import { childReading } from '../reading/child-reading';
import { saidOfSheet } from '../reading/said';
import { useRead } from '../reading/use-read';
import { AnswerTable } from './answer-table';
import { type Entry, partsOf } from './book-of';
import { Decided } from './decided';
import { bandSentence, leftSentence, resultSentence, wouldBeSentence } from './result-words';
import { WholeRulings } from './whole-rulings';
import { flagSentences, markingWords, rateSentence, sittingName, waySentence } from './words';

export interface SittingReadingProps {
  readonly desk: Desk;
  readonly history: History;
  readonly entry: Entry;
}

/** One sitting: sentences first, then answer by answer, then what the parent has decided. */
export function SittingReading({ desk, history, entry }: SittingReadingProps) {
  const acting = useActing();
  const household = desk.household.value;
  const { sat, marked, child } = entry;
  const settings = findChild(household, child)?.settings;
  const sentences = [
    ...resultSentences(entry, household, settings),
    leftSentence(marked),
    rateSentence(marked),
  ].filter(Boolean);
  const parts = partsOf(household, history, sat.id);
  const owner = findChild(household, child);
  const reading = owner && childReading(household, history, owner);
  const said = useRead(
    function* () {
      if (!reading) return [];
      yield* reading.prepare();
      return saidOfSheet(reading, sat.id);
    },
    [reading, sat.id],
  );
  const causes = (part: Entry) => (reading ? causesOf(reading, part) : null);
  return (
    <>
      <div class="actions no-print">
        <button type="button" class="quiet" onClick={() => turnTo('marking')}>
          {markingWords.all}
        </button>
      </div>
      <Heading>
        {nameOf(household, child)}, {longDay(sat.day)}
      </Heading>
      <p>
        {originSentence(entry, household)} {waySentence(sat)}
      </p>
      {said?.map((one) => (
        <Said key={one.text} {...one} />
      ))}
      {sentences.length > 0 && (
        <div class="hint">
          <Said
            text={sentences.join(' ')}
            how={[
              ...(sat.clock ? [markingWords.byBellMeans, markingWords.bandMeans] : []),
              ...(marked.digitsPerMin === null ? [] : [markingWords.digitsMeans]),
            ]}
            ask={saidWords.words}
          />
        </div>
      )}
      {flagSentences(marked).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Trouble sentence={acting.trouble} />
      <div class="two" data-holds=".undo">
        <WholeRulings desk={desk} entry={entry} acting={acting} />
        <Decided desk={desk} entry={entry} acting={acting} />
      </div>
      <AnswerTable
        desk={desk}
        entry={entry}
        acting={acting}
        title={markingWords.answers}
        causes={causes(entry)}
      />
      {parts.map((part, index) => (
        <AnswerTable
          key={part.sat.id}
          desk={desk}
          entry={part}
          acting={acting}
          title={`${sittingName(part.sat)} ${index + 1}`}
          causes={causes(part)}
        />
      ))}
    </>
  );
}

function originSentence({ sat }: Entry, household: Household): string {
  const purpose = sittingName(sat);
  if (sat.set !== null) return markingWords.from(purpose, setName(household, sat.set));
  if (sat.lookBack) return markingWords.ofKept(purpose);
  return sat.spread ? markingWords.ofSpread(purpose) : markingWords.alone(purpose);
}

function resultSentences(
  { sat, marked }: Entry,
  household: Household,
  settings: ChildSettings | undefined,
): readonly string[] {
  const names = household.settings.bandNames;
  if (sat.purpose !== 'sheet') return [resultSentence(sat, marked, names)];
  if (sat.clock || !settings) return [bandSentence(marked, names)];
  const wouldBe = bandInFirst(marked, settings.allowanceS * 1000);
  const right = rightInFirst(marked, settings.allowanceS * 1000);
  // The count itself is told above, by the reading.
  return [
    marked.noBand === 'untimed' ? '' : bandSentence(marked, names),
    wouldBe ? wouldBeSentence(settings.allowanceS, right, names[wouldBe]) : '',
  ];
}
