import type { Key, KeyPress, Sat, Visit, VisitEnd } from '../../core/record/sat';

const keyNames: Partial<Record<Key, string>> = { back: 'back', done: 'done', skip: 'skip' };

const endNames: Record<VisitEnd, string> = {
  taken: 'taken',
  skipped: 'skipped',
  back: 'the card before opened again',
  left: 'left, void',
};

/** Every key of a place, each with its time after the card's onset, one visit after the other. */
export function keysOf(sat: Sat, place: number): string {
  const visits = sat.visits.filter((visit) => visit.place === place);
  return visits.map(visitText).join(' | ') || 'no key';
}

function visitText(visit: Visit): string {
  const lateFrom = visit.keys.length - (visit.late ?? 0);
  const keys = visit.keys.map((key, index) => keyText(key, visit, index >= lateFrom));
  const from = visit.from ? [`“${visit.from}” stood there`] : [];
  return [...from, ...keys, endNames[visit.end]].join(', ');
}

function keyText([key, atMs, via]: KeyPress, visit: Visit, isLate: boolean): string {
  const name = keyNames[key] ?? key;
  const when =
    atMs === null || visit.onsetMs === null ? '' : ` ${((atMs - visit.onsetMs) / 1000).toFixed(2)} s`;
  return `${name}${when}${via === 'touch' ? ' by touch' : ''}${isLate ? ' (late, entered nowhere)' : ''}`;
}
