import './parent.css';
import type { Desk } from '../state/desk';
import type { Gate } from '../state/gate';
import { AboutPage } from './about/about-page';
import { ChildrenPage } from './children/children-page';
import { FactsPage } from './facts/facts-page';
import { MarkingPage } from './marking/marking-page';
import { OverTimePage } from './over-time/over-time-page';
import { type Page, place, turnTo } from './place';
import { SettingsPage } from './settings/settings-page';
import { setupStep } from './setup/progress';
import { Setup } from './setup/setup';
import { SittingsPage } from './sittings/sittings-page';
import { TodayPage } from './today/today-page';
import { troubleSentence } from './trouble-words';
import { insideWords } from './words';

export interface InsideProps {
  readonly desk: Desk;
  readonly gate: Gate;
}

const pages: readonly Page[] = [
  'today',
  'marking',
  'facts',
  'overTime',
  'children',
  'sittings',
  'settings',
  'about',
];

/** Everything behind the door: set-up while there is no child, then the pages. */
export function Inside({ desk, gate }: InsideProps) {
  const hasNobody = desk.household.value.children.length === 0;
  if (gate.phase.value === 'unset' || hasNobody || setupStep.value) return <Setup desk={desk} gate={gate} />;
  const at = place.value.page;
  return (
    <div class="parent">
      <header class="top">
        <nav aria-label={insideWords.pages}>
          <ul>
            {pages.map((page) => (
              <li key={page}>
                <button
                  type="button"
                  aria-current={page === at ? 'page' : undefined}
                  onClick={() => turnTo(page)}
                >
                  {insideWords.page[page]}
                </button>
              </li>
            ))}
          </ul>
        </nav>
        <button type="button" class="lock" onClick={() => desk.lock()}>
          {insideWords.lock}
        </button>
      </header>
      <main class="page" key={at}>
        <Notices desk={desk} />
        <PageBody page={at} desk={desk} gate={gate} />
      </main>
    </div>
  );
}

function PageBody({ page, desk, gate }: InsideProps & { readonly page: Page }) {
  switch (page) {
    case 'today':
      return <TodayPage desk={desk} />;
    case 'marking':
      return <MarkingPage desk={desk} />;
    case 'facts':
      return <FactsPage desk={desk} />;
    case 'overTime':
      return <OverTimePage desk={desk} />;
    case 'children':
      return <ChildrenPage desk={desk} />;
    case 'sittings':
      return <SittingsPage desk={desk} />;
    case 'settings':
      return <SettingsPage desk={desk} gate={gate} />;
    case 'about':
      return <AboutPage desk={desk} />;
  }
}

/** What the storage has to say, above every page. */
function Notices({ desk }: { readonly desk: Desk }) {
  const { trouble, later } = desk.storage.value;
  return (
    <>
      {trouble && (
        <p class="trouble" role="alert">
          {troubleSentence(trouble)}
        </p>
      )}
      {later > 0 && <p class="trouble">{insideWords.later(later)}</p>}
    </>
  );
}
