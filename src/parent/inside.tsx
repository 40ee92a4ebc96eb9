import './parent.css';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { Id } from '../core/record/stamp';
import type { Desk } from '../state/desk';
import type { Gate } from '../state/gate';
import { AboutPage } from './about/about-page';
import { ChildrenPage } from './children/children-page';
import { FactsPage } from './facts/facts-page';
import { holdFocus } from './hold-focus';
import { MarkingPage } from './marking/marking-page';
import { MondayPage } from './monday/monday-page';
import { OverTimePage } from './over-time/over-time-page';
import { Fetched } from './parts/fetched';
import { HeldAnswers } from './parts/held-answers';
import { type Page, place, turnTo } from './place';
import { BackupReminder } from './record-book/backup-reminder';
import { SettingsPage } from './settings/settings-page';
import { setupStep } from './setup/progress';
import { Setup } from './setup/setup';
import { SittingsPage } from './sittings/sittings-page';
import { SpokenPage } from './spoken/spoken-page';
import { TodayPage } from './today/today-page';
import { Top } from './top';
import { troubleSentence } from './trouble-words';
import { insideWords } from './words';

export interface InsideProps {
  readonly desk: Desk;
  readonly gate: Gate;
  /** Leaves the demo household; `null` at home. */
  readonly onLeaveBoat: (() => void) | null;
  /** Set-up begins with a file to restore. */
  readonly isRestoring: boolean;
  /** The child at whose cloth the grown-up was called: the pages begin with it. */
  readonly calledBy: Id | null;
}

const fetchPaper = () => import('./paper/paper-page').then(({ PaperPage }) => PaperPage);
const fetchRecordBook = () =>
  import('./record-book/record-book-page').then(({ RecordBookPage }) => RecordBookPage);

/** Everything behind the door: set-up while there is no child, then the pages. */
export function Inside({ desk, gate, onLeaveBoat, isRestoring, calledBy }: InsideProps) {
  const root = useRef<HTMLDivElement>(null);
  const hasNobody = desk.household.value.children.length === 0;
  const isSettingUp = gate.phase.value === 'unset' || hasNobody || setupStep.value !== null;
  useEffect(() => (root.current ? holdFocus(root.current) : undefined), [isSettingUp]);
  useLayoutEffect(() => {
    // Whoever left another page open comes back to it as it was.
    if (calledBy !== null && place.value.page === 'today') turnTo('today', { child: calledBy });
  }, [calledBy]);
  if (isSettingUp) return <Setup desk={desk} gate={gate} isRestoring={isRestoring} />;
  const at = place.value.page;
  return (
    <div class="parent" ref={root}>
      <Top desk={desk} onLeaveBoat={onLeaveBoat} />
      <main class="page" key={at} data-holds="h1">
        <Notices desk={desk} />
        {at === 'today' && !onLeaveBoat && <BackupReminder desk={desk} />}
        <PageBody page={at} desk={desk} gate={gate} isBoat={onLeaveBoat !== null} />
      </main>
    </div>
  );
}

interface PageBodyProps {
  readonly page: Page;
  readonly desk: Desk;
  readonly gate: Gate;
  readonly isBoat: boolean;
}

function PageBody({ page, desk, gate, isBoat }: PageBodyProps) {
  switch (page) {
    case 'today':
      return <TodayPage desk={desk} />;
    case 'marking':
      return <MarkingPage desk={desk} />;
    case 'facts':
      return <FactsPage desk={desk} />;
    case 'overTime':
      return <OverTimePage desk={desk} />;
    case 'paper':
      return <Fetched fetch={fetchPaper} props={{ desk }} />;
    case 'children':
      return <ChildrenPage desk={desk} />;
    case 'sittings':
      return <SittingsPage desk={desk} />;
    case 'recordBook':
      return <Fetched fetch={fetchRecordBook} props={{ desk }} />;
    case 'settings':
      return <SettingsPage desk={desk} gate={isBoat ? null : gate} />;
    case 'spoken':
      return <SpokenPage desk={desk} />;
    case 'monday':
      return <MondayPage desk={desk} />;
    case 'about':
      return <AboutPage desk={desk} />;
  }
}

/** What the storage has to say, above every page. */
function Notices({ desk }: { readonly desk: Desk }) {
  const { trouble, waiting, later } = desk.storage.value;
  return (
    <>
      {trouble && (
        <p class="trouble" role="alert">
          {troubleSentence(trouble)}
        </p>
      )}
      {trouble && waiting > 0 && <HeldAnswers desk={desk} />}
      {later > 0 && <p class="trouble">{insideWords.later(later)}</p>}
    </>
  );
}
