import { type Band, scaleLimit } from '../../core/marking/band';
import type { Marked, NoBand } from '../../core/marking/marked';
import type { Sat } from '../../core/record/sat';
import type { HouseholdSettings } from '../../core/record/settings';
import { count, sentence } from '../words';

type BandNames = HouseholdSettings['bandNames'];

/** How a sitting came out, in one sentence: the band with its count, or the count alone and why. */
export function resultSentence(sat: Sat, marked: Marked, names: BandNames): string {
  const of = sat.prompts.length;
  const voided = marked.noBand === 'voided' ? ' It does not count.' : '';
  if (!sat.clock) return `${marked.right} of ${of} right, without a clock.${voided}`;
  if (marked.band) return `${names[marked.band]}: ${marked.rightByBell} right by the bell, of ${of}.`;
  return `${marked.rightByBell} right by the bell, of ${of}; ${noBandWords[marked.noBand ?? 'untimed']}.`;
}

const noBandWords: Record<NoBand, string> = {
  voided: 'does not count',
  notOwnWork: 'no band, somebody helped',
  untimed: 'no band',
  second: 'no band, a second sheet',
  interrupted: 'no band, interrupted',
};

/** The band that the count falls into, with its limits for a sheet of this length, or why there is none. */
export function bandSentence(marked: Marked, names: BandNames): string {
  const { band, places } = marked;
  if (!band) return noBandSentence(marked);
  return `${names[band]} is ${reachOf(band, marked)} of ${places.length} right by the bell.`;
}

function reachOf(band: Band, { limits, places }: Marked): string {
  const [firm, even, loose] = [limits.firm, limits.even, limits.loose].map((limit) =>
    scaleLimit(limit, places.length),
  ) as [number, number, number];
  switch (band) {
    case 'firm':
      return `${firm} to ${places.length}`;
    case 'even':
      return `${even} to ${firm - 1}`;
    case 'loose':
      return `${loose} to ${even - 1}`;
    case 'thin':
      return `under ${loose}`;
  }
}

/** Which band the beginning of an untimed sheet falls in when it is counted like a timed one; said, never acted on. */
export function wouldBeSentence(allowanceS: number, right: number, band: string): string {
  return `${sentence(count(right, 'was', 'were'))} right in the first ${allowanceS}\u00a0s; counted like a sheet with the clock, that is ${band}.`;
}

function noBandSentence({ noBand }: Marked): string {
  switch (noBand) {
    case null:
      return '';
    case 'untimed':
      return 'There was no clock, so there is no band.';
    case 'interrupted':
      return 'It was interrupted, so it has no band unless you give it one.';
    case 'second':
      return 'It was a second sheet on one day. It is kept, but has no band.';
    case 'voided':
      return 'You ruled that it does not count.';
    case 'notOwnWork':
      return 'You ruled that somebody helped, so it has no band.';
  }
}

/** What was wrong, skipped, not reached or unfinished, as a sentence; empty when nothing was. */
export function leftSentence({ wrong, skipped, unfinished, notReached }: Marked): string {
  const parts = [
    [wrong, 'wrong'],
    [skipped, 'skipped'],
    [unfinished, 'unfinished'],
    [notReached, 'not reached'],
  ] as const;
  const said = parts.filter(([many]) => many > 0).map(([many, what]) => count(many, what, what));
  return said.length === 0 ? '' : sentence(`${said.join(', ')}.`);
}
