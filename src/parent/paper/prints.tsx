import { useLayoutEffect } from 'preact/hooks';
import { planLines } from '../../core/gap-line/plan-lines';
import type { History } from '../../core/household/history';
import { noHistory } from '../../core/household/history';
import type { Child } from '../../core/household/household';
import { seedFor } from '../../core/plan/seed';
import { pieceOf, sheetDays } from '../../core/plan/sheet-day';
import { CardPages } from '../../paper/card-pages';
import { ClothPages } from '../../paper/cloth-pages';
import { KeyPages } from '../../paper/key-pages';
import { type LinePage, LinePages } from '../../paper/line-pages';
import { ruleThePage } from '../../paper/page-rule';
import { type PaperSize, paperSizeFor } from '../../paper/paper-size';
import { type PrintedSheet, SheetPages } from '../../paper/sheet-pages';
import type { Desk } from '../../state/desk';
import type { PiecePicture } from '../../ui/piece';
import { nameOf } from '../children/name-of';
import { findSet, setName } from '../children/set-list';
import { shortDay } from '../parts/when';
import { GridPages } from './grid-pages';
import { type SheetOnPaper, schoolDaysFrom } from './plan-prints';
import { cardSet, type PrintChoice } from './print-form';
import { type PrintWhat, printWords } from './words';

export interface PrintsProps {
  readonly desk: Desk;
  readonly history: History;
  readonly form: PrintChoice;
  readonly what: PrintWhat;
  readonly sheets: readonly SheetOnPaper[];
}

/** All that goes to the printer, small on the screen and as large as the paper in print. */
export function Prints(props: PrintsProps) {
  const size = paperSizeFor(props.desk.household.value.settings.paperSize, navigator.language);
  useLayoutEffect(() => ruleThePage(document, size), [size]);
  return (
    <section class="paper-prints" aria-label={printWords.preview}>
      <Pages {...props} size={size} />
    </section>
  );
}

interface PagesProps extends PrintsProps {
  readonly size: PaperSize;
}

function Pages({ desk, history, form, what, sheets, size }: PagesProps) {
  const household = desk.household.value;
  const children = household.children.filter(({ id }) => form.who.has(id));
  switch (what) {
    case 'sheets': {
      const printed = sheets.map((sheet) => printedAs(desk, sheet));
      return (
        <>
          {printed.map((sheet, at) => (
            <SheetPages key={at} sheet={sheet} size={size} hasNameLine={form.hasNameLine} />
          ))}
          {form.hasKey && <KeyPages sheets={printed} size={size} />}
        </>
      );
    }
    case 'cards':
      return (
        <CardPages facts={findSet(household, form.set ?? cardSet(household))?.facts ?? []} size={size} />
      );
    case 'lines': {
      const pages = children.flatMap((child) => linePages(desk, child, form));
      return <LinePages pages={pages} size={size} hasKey={form.hasKey && pages.length > 0} />;
    }
    case 'grid':
      return (
        <>
          {children.map((child) => (
            <GridPages key={child.id} desk={desk} history={history} child={child} op={form.op} size={size} />
          ))}
        </>
      );
    case 'cloth': {
      const cloths = children.map((child) => ({
        child,
        pieces: piecesOf(history, child, desk.today.value),
      }));
      if (cloths.every(({ pieces }) => pieces.length === 0)) return <p>{printWords.noPieces}</p>;
      return (
        <>
          {cloths.map(({ child, pieces }) => (
            <ClothPages key={child.id} name={child.name} pieces={pieces} size={size} />
          ))}
        </>
      );
    }
  }
}

function printedAs(desk: Desk, sheet: SheetOnPaper): PrintedSheet {
  const household = desk.household.value;
  return {
    ...sheet,
    name: nameOf(household, sheet.child),
    day: shortDay(sheet.day),
    setName: setName(household, sheet.set),
  };
}

const onPage = { lines: 6, stories: 2 } as const;

function linePages(desk: Desk, child: Child, { set, from, days }: PrintChoice): readonly LinePage[] {
  const facts = findSet(desk.household.value, set ?? child.currentSet ?? '')?.facts ?? [];
  if (facts.length === 0) return [];
  return schoolDaysFrom(from, days, child.settings.schoolDays).map((day) => ({
    name: child.name,
    day: shortDay(day),
    prompts: planLines({ set: facts, facts, ...onPage, seed: seedFor(child.id, day, 'paper lines', 0) }),
  }));
}

/** One ink: paper has no dyes. */
function piecesOf(history: History, { id, settings }: Child, today: string): readonly PiecePicture[] {
  const { sittings } = history.children.get(id) ?? noHistory;
  return sheetDays(sittings, settings.limits).map((sheet) => {
    const { seed, day } = sheet.ruled.sat;
    const places = pieceOf(sheet, day < today).flat();
    return { seed, places: places.map(({ op, state }) => ({ op, state })) };
  });
}
