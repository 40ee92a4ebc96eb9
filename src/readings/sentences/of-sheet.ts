import type { SittingReading } from '../sitting-verdict/sitting-reading';
import type { Verdict } from '../sitting-verdict/verdict';
import type { SheetSentence } from './sentence';

/** So many pauses inside answers on one sheet are worth a word: nine gaps in ten are no longer, so some are usual. */
const pauseShare = 0.3;

/** What a sheet's reading says: how it came out, the extra rows, why. */
export function sentencesOfSheet(reading: SittingReading): readonly SheetSentence[] {
  const { timed, right, rightByBell, reached, length, noBand, rows, verdicts, pausesInside } = reading;
  const result: SheetSentence = timed
    ? { kind: 'byBell', right: rightByBell, reached, length }
    : { kind: 'atEase', right, reached, length };
  if (noBand === 'voided' || noBand === 'notOwnWork') return [result, { kind: 'notCounted', why: noBand }];
  const many = pausesInside !== null && pausesInside >= Math.max(4, pauseShare * reached);
  return [
    result,
    ...(rows ? [{ kind: 'rows' as const, right: rows.right, of: rows.answers, thinkS: rows.thinkS }] : []),
    ...verdicts.map((verdict) => ofVerdict(verdict, timed)),
    ...(many ? [{ kind: 'pauses' as const, times: pausesInside }] : []),
  ];
}

function ofVerdict(verdict: Verdict, timed: boolean): SheetSentence {
  switch (verdict.name) {
    case 'notKnown':
      return { kind: 'notKnown', verdict };
    case 'new':
      return { kind: 'new', verdict };
    case 'rushed':
      return { kind: rushedKinds[verdict.by], verdict };
    case 'flustered':
      return { kind: flusteredKinds[verdict.by], verdict };
    case 'slowHands':
      return { kind: 'slowHands', verdict };
    case 'checking':
      return { kind: 'checking', verdict };
    case 'fine':
      return { kind: 'fine', timed };
    case 'cannotTell':
      return verdict.why === 'tooFew' ? { kind: 'tooFew', timed } : { kind: verdict.why };
  }
}

const rushedKinds = {
  wrongQuicker: 'rushedWrongQuicker',
  quickerThanUsual: 'rushedThanUsual',
  unread: 'rushedUnread',
} as const;

const flusteredKinds = {
  slower: 'flusteredSlower',
  lessRight: 'flusteredLessRight',
  both: 'flusteredBoth',
} as const;
