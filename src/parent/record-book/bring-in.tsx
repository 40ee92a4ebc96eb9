import { useSignal } from '@preact/signals';
import type { Id } from '../../core/record/stamp';
import type { FileContents, Merged, RecordBook, RecordFile } from '../../state/record-book/record-book';
import { useActing } from '../acting';
import { FilePicker } from '../parts/file-picker';
import { Tick } from '../parts/tick';
import { Trouble } from '../parts/trouble';
import { linesOf, sittingsSaid } from './contents-lines';
import { restoreWords } from './words';

export interface BringInProps {
  readonly book: RecordBook;
  readonly onDone?: (merged: Merged) => void;
}

interface Looked {
  readonly file: RecordFile;
  readonly contents: FileContents;
}

/** A file chosen, what it holds, and only then the button that brings it in. */
export function BringIn({ book, onDone }: BringInProps) {
  const { act, isBusy, trouble } = useActing();
  const looked = useSignal<Looked | null>(null);
  const refused = useSignal<string | null>(null);
  const asNew = useSignal<readonly Id[]>([]);
  const says = useSignal<string | null>(null);

  const look = (chosen: File) =>
    act(async () => {
      looked.value = null;
      refused.value = null;
      asNew.value = [];
      says.value = restoreWords.reading;
      try {
        const reading = await book.readFile(chosen);
        if ('trouble' in reading) refused.value = `${reading.trouble.reason} ${restoreWords.unchanged}`;
        else looked.value = { file: reading.file, contents: await book.lookInto(reading.file) };
      } finally {
        says.value = null;
      }
    });

  const bringIn = ({ file }: Looked) =>
    act(async () => {
      says.value = restoreWords.bringing;
      try {
        const merged = await book.bringIn(file, asNew.value);
        looked.value = null;
        says.value = restoreWords.done(merged.added);
        onDone?.(merged);
      } catch (error) {
        says.value = null;
        throw error;
      }
    });

  const { value } = looked;
  return (
    <div data-holds=".file-said, button">
      <FilePicker label={restoreWords.choose} accept=".json,.gz,application/json" onChoose={look} />
      <div role="alert">{refused.value && <p class="trouble">{refused.value}</p>}</div>
      {value && (
        <div class="card">
          <FileSaid contents={value.contents} asNew={asNew.value} onTurn={turn} />
          <div class="actions">
            {(value.contents.fresh > 0 || asNew.value.length > 0) && (
              <button type="button" class="main" aria-disabled={isBusy.value} onClick={() => bringIn(value)}>
                {asNew.value.length > 0 || value.contents.fresh === 0
                  ? restoreWords.bringInChild
                  : restoreWords.bringIn(value.contents.fresh)}
              </button>
            )}
            <button
              type="button"
              class="quiet"
              onClick={() => {
                looked.value = null;
              }}
            >
              {restoreWords.leave}
            </button>
          </div>
        </div>
      )}
      <p class="kept file-said" role="status" tabIndex={-1}>
        {says.value}
      </p>
      <Trouble sentence={trouble} />
    </div>
  );

  async function turn(child: Id, isOn: boolean) {
    asNew.value = isOn ? [...asNew.value, child] : asNew.value.filter((id) => id !== child);
  }
}

interface FileSaidProps {
  readonly contents: FileContents;
  readonly asNew: readonly Id[];
  readonly onTurn: (child: Id, isOn: boolean) => unknown;
}

/** What a file holds, in sentences; a child deleted for good with a box that brings it in as a new one. */
function FileSaid({ contents, asNew, onTurn }: FileSaidProps) {
  const [made, ...lines] = linesOf(contents);
  const deleted = contents.children.filter(({ state }) => state === 'deleted');
  return (
    <>
      <h3>{made}</h3>
      <ul class="bare">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        {deleted.map((child) => (
          <li key={child.id}>
            {restoreWords.childDeleted(child.name, sittingsSaid(child))}
            <br />
            <Tick
              label={restoreWords.asNew(child.name)}
              isOn={asNew.includes(child.id)}
              onTurn={(isOn) => onTurn(child.id, isOn)}
            />
          </li>
        ))}
      </ul>
    </>
  );
}
