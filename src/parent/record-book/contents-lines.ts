import { format } from 'date-fns';
import type { ChildInFile, FileContents } from '../../state/record-book/record-book';
import { shortDay } from '../parts/when';
import { restoreWords } from './words';

/** What a file holds, line by line, the children deleted for good apart; first whose it is. */
export function linesOf(contents: FileContents): readonly string[] {
  const { madeAt, isOwn, children, decisions, deletes, later, fresh } = contents;
  const when = format(madeAt, 'd MMMM yyyy, HH:mm');
  return [
    isOwn ? restoreWords.madeHere(when) : restoreWords.madeElsewhere(when),
    ...(children.length === 0 ? [restoreWords.nobody] : []),
    ...children.flatMap(childLines),
    restoreWords.decisions(decisions.all, decisions.fresh),
    ...deletes.map(restoreWords.deletes),
    ...(later > 0 ? [restoreWords.later(later)] : []),
    ...(fresh === 0 ? [restoreWords.nothingNew] : []),
  ];
}

function childLines(child: ChildInFile): readonly string[] {
  const { name, state, hasNamesake, sittings } = child;
  switch (state) {
    case 'here':
      return [restoreWords.childHere(name, sittingsSaid(child), sittings.fresh)];
    case 'new':
      return [
        restoreWords.childNew(name, sittingsSaid(child)),
        ...(hasNamesake ? [restoreWords.namesake(name)] : []),
      ];
    case 'deleted':
      return [];
  }
}

/** `103 sittings, Mon 5 Oct 2026 to Wed 25 Nov 2026`. */
export function sittingsSaid({ sittings: { all, firstDay, lastDay } }: ChildInFile): string {
  const span = firstDay && lastDay && restoreWords.span(shortDay(firstDay), shortDay(lastDay));
  return restoreWords.sittings(all, span);
}
