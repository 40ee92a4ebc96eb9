import './report.css';
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { History } from '../../../core/household/history';
import type { Child } from '../../../core/household/household';
import type { Desk } from '../../../state/desk';
import type { Decision, RecordBook } from '../../../state/record-book/record-book';
import { ChildTabs, chosenChild } from '../../children/child-tabs';
import { bookOf } from '../../marking/book-of';
import { longDay } from '../../parts/when';
import { childReading } from '../../reading/child-reading';
import { daysBefore } from './days-before';
import { Remarks } from './remarks';
import { KnownNow, Months, Samples, Sets } from './report-parts';
import { setsOf } from './sets-of';
import { SpanChoice } from './span-choice';
import { readTerm, type Span } from './term';
import { reportWords } from './words';

export interface TermReportProps {
  readonly desk: Desk;
  readonly book: RecordBook;
}

/** How far back a report reaches where no school year was begun: a term, in days. */
const usualDays = 90;

/** One child's term, for a portfolio; what is no part of it is not printed. */
export function TermReport({ desk, book }: TermReportProps) {
  const household = desk.household.value;
  const today = desk.today.value;
  const { years } = household;
  const year = years.findLast(({ begins }) => begins <= today);
  const span = useSignal<Span>({ from: year?.begins ?? daysBefore(today, usualDays), to: today });
  const decisions = useSignal<readonly Decision[]>([]);
  useEffect(() => {
    book.decisions().then(
      (read) => {
        decisions.value = read;
      },
      () => undefined,
    );
  }, [book, household]);
  const child = chosenChild(household);
  const history = desk.history.value;
  const isSpan = span.value.from <= span.value.to;
  return (
    <>
      <div class="no-print">
        <h2>{reportWords.title}</h2>
        <p>{reportWords.lead}</p>
        <ChildTabs desk={desk} page="recordBook" />
        <SpanChoice span={span} years={years} today={today} />
        {!isSpan && <p role="alert">{reportWords.noSpan}</p>}
        <div class="actions">
          <button type="button" class="main" aria-disabled={!isSpan} onClick={() => window.print()}>
            {reportWords.print}
          </button>
        </div>
      </div>
      {child && history && isSpan && (
        <Report
          key={`${child.id} ${span.value.from} ${span.value.to}`}
          desk={desk}
          child={child}
          history={history}
          span={span.value}
          decisions={decisions.value}
        />
      )}
    </>
  );
}

interface ReportProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly history: History;
  readonly span: Span;
  readonly decisions: readonly Decision[];
}

function Report({ desk, child, history, span, decisions }: ReportProps) {
  const household = desk.household.value;
  const { whole, months, samples } = readTerm(bookOf(household, history, child.id), span);
  const readings = [...childReading(household, history, child).facts.values()];
  return (
    <article class="report" aria-label={reportWords.heading(child.name)}>
      <h2 class="report-title">{reportWords.heading(child.name)}</h2>
      <p class="report-days">{reportWords.span(longDay(span.from), longDay(span.to))}</p>
      {whole.days === 0 ? (
        <p>{reportWords.nothing(child.name)}</p>
      ) : (
        <p>
          {reportWords.sat(child.name, whole.days, whole.sheets)}{' '}
          {whole.minutes > 0 && `${reportWords.minutes(whole.minutes)} `}
          {whole.answers > 0 && reportWords.right(whole.right, whole.answers)}
        </p>
      )}
      <Sets household={household} child={child} {...setsOf(decisions, child, household, span)} />
      {months.length > 0 && <Months months={months} />}
      <KnownNow readings={readings} />
      <Remarks desk={desk} child={child} span={span} />
      <Samples household={household} samples={samples} />
      <p class="hint report-duties">{reportWords.duties}</p>
    </article>
  );
}
