import type { SittingReading } from '../sitting-verdict/sitting-reading';
import type { CannotTell, Verdict } from '../sitting-verdict/verdict';
import type { SheetSentence } from './sentence';

/** So many pauses inside answers on one sheet are worth a word: nine gaps in ten are no longer, so some are usual. */
const pauseShare = 0.3;

/** What a sheet's reading says: how it came out, the extra rows, why. */
export function sentencesOfSheet(reading: SittingReading): readonly SheetSentence[] {
  const { timed, right, rightByBell, noBand, rows, verdicts, pausesInside, gapsInside } = reading;
  const { reached, length, accepted, slips } = reading;
  const result: SheetSentence = timed
    ? { kind: 'byBell', right: rightByBell, reached, length, accepted, slips }
    : { kind: 'atEase', right, reached, length, accepted, slips };
  if (noBand === 'voided' || noBand === 'notOwnWork') return [result, { kind: 'notCounted', why: noBand }];
  const many = pausesInside !== null && pausesInside >= Math.max(4, pauseShare * reached);
  return [
    result,
    ...(rows ? [{ kind: 'rows' as const, right: rows.right, of: rows.answers, thinkS: rows.thinkS }] : []),
    ...verdicts.map((verdict) => ofVerdict(verdict, reading)),
    ...(many ? [{ kind: 'pauses' as const, times: pausesInside, of: gapsInside ?? pausesInside }] : []),
  ];
}

function ofVerdict(verdict: Verdict, reading: SittingReading): SheetSentence {
  const { timed, drawn, slips, verdicts, band, right, wrong, skipped, reached, length } = reading;
  switch (verdict.name) {
    case 'notKnown':
      return { kind: 'notKnown', verdict };
    case 'new':
      return { kind: 'new', verdict };
    case 'rushed':
      return verdict.by === 'wrongQuicker'
        ? {
            kind: 'rushedWrongQuicker',
            verdict,
            advises: !drawn,
            untimed: Math.max(0, right + wrong - verdict.of - verdict.slips),
            bellFirst: timed && reached < length,
          }
        : { kind: rushedKinds[verdict.by], verdict };
    case 'flustered':
      return { kind: flusteredKinds[verdict.by], verdict };
    case 'slowHands':
      // Nobody is told to take the clock away and to give more seconds at once.
      return {
        kind: 'slowHands',
        verdict,
        advises: !drawn && verdicts.every(({ name }) => name !== 'rushed'),
      };
    case 'checking':
      return { kind: 'checking', verdict };
    case 'fine':
      return { kind: 'fine', timed, band, slips };
    case 'cannotTell':
      return ofCannotTell(verdict.why, timed, wrong + skipped, reached === length);
  }
}

function ofCannotTell(why: CannotTell['why'], timed: boolean, wrong: number, whole: boolean): SheetSentence {
  if (why === 'tooFew') return { kind: why, timed, wrong };
  return why === 'interrupted' ? { kind: why, whole } : { kind: why };
}

const rushedKinds = {
  quickerThanUsual: 'rushedThanUsual',
  unread: 'rushedUnread',
} as const;

const flusteredKinds = {
  slower: 'flusteredSlower',
  lessRight: 'flusteredLessRight',
  both: 'flusteredBoth',
} as const;
