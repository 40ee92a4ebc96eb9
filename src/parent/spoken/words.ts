import type { SpokenReason } from '../../core/look-back/spoken-check';
import type { SpokenAnswer } from '../../core/record/household-record';
import { count } from '../words';

export const spokenWords = {
  title: (name: string) => `Spoken check: ${name}`,
  lead: 'Read each fact aloud and wait. Help is allowed here, and noted. Nothing is timed.',
  none: 'No spoken check waits. How often one comes is in the settings.',
  answers: 'The answers',
  keep: 'Keep this check',
  kept: 'The spoken check is kept.',
  unmarked: (left: number) => `${count(left, 'fact is', 'facts are')} not marked yet.`,
  marked: (fact: string) => `How ${fact} came`,
  back: 'Back to Today',
  heldToday: 'Heard today',
} as const;

/** How a fact asked aloud came. */
export const cameNames: Record<SpokenAnswer, string> = {
  right: 'right',
  helped: 'right, with help',
  notYet: 'not yet',
};

/** Why a fact was chosen to be asked aloud. */
export function reasonText(reason: SpokenReason): string {
  switch (reason.why) {
    case 'missed':
      return reason.of === 1
        ? 'Its last answer was wrong or skipped.'
        : `Of its last ${count(reason.of, 'answer', 'answers')}, ${count(reason.wrong, 'was', 'were')} wrong or skipped.`;
    case 'faded':
      return reason.days === null
        ? 'It was never right at first try.'
        : `Last right at first try ${reason.days === 0 ? 'today' : `${count(reason.days, 'day', 'days')} ago`}.`;
    case 'young':
      return `Right at first try on ${count(reason.rightDays, 'day', 'days')} so far.`;
  }
}
