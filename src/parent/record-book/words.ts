import { count, sentence } from '../words';

export const bookWords = {
  title: 'Record book',
  lead: 'Everything that is recorded, to keep, to carry to another device and to show.',
  opening: 'Opening the record book …',
  notFetched: 'This part could not be fetched. Go online once; after that it works without.',
} as const;

export const backupWords = {
  title: 'Backup',
  lead: 'One file with every child’s record. Keep it away from this device: in a mail to yourself, on a stick, with a friend. It holds names and answers, and no PIN.',
  make: 'Make a backup',
  making: 'Writing the file …',
  shared: (records: number) => `The file was handed over. It holds ${recordCount(records)}.`,
  downloaded: (name: string, records: number) =>
    `“${name}” is among the downloads. It holds ${recordCount(records)}.`,
  givenUp: 'No file was saved: the sheet for sharing was closed.',
  download: 'Save it among the downloads instead',
  last: (when: string) => `The last backup on this device is of ${when}.`,
  never: 'There is no backup of this household from this device yet.',
  old: (days: number) => `The last backup is ${count(days, 'day', 'days')} old.`,
  notPromised: 'The browser has not promised to keep what is stored here, so one a week is wise.',
  open: 'Open the record book',
  remind: 'Remind me when the last backup is older than',
  remindHint: 'The reminder stands on Today, in words. It never comes up before a child.',
  days: (days: number) => `${days} days`,
} as const;

export const restoreWords = {
  title: 'Bring in a file',
  lead: 'A backup of this household, or of another device that the same children use. What is here stays; what is new is added. You see what it holds before anything happens.',
  choose: 'Choose a file',
  reading: 'Reading the file …',
  unchanged: 'Nothing was changed.',
  madeHere: (when: string) => `A backup made on this device, ${when}.`,
  madeElsewhere: (when: string) => `A backup made on another device, ${when}.`,
  nobody: 'There is no child in it.',
  sittings: (all: number, span: string | null) =>
    span === null ? 'no sitting yet' : `${count(all, 'sitting', 'sittings')}, ${span}`,
  span: (from: string, to: string) => (from === to ? from : `${from} to ${to}`),
  childNew: (name: string, sittings: string) => `${name} is not on this device yet: ${sittings}.`,
  childHere: (name: string, sittings: string, fresh: number) =>
    `${name}: ${sittings}; ${fresh === 0 ? 'none of them is new' : `${count(fresh, 'is', 'are')} new`}.`,
  namesake: (name: string) =>
    `There is another ${name} on this device, set up on its own. Both are kept, as two children.`,
  childDeleted: (name: string, sittings: string) =>
    `${name} was deleted for good, but is in this file: ${sittings}. This stays out.`,
  asNew: (name: string) => `Bring ${name} in as a new child, with all of it`,
  deletes: (name: string) =>
    `The file says that ${name} was deleted for good. Bringing it in deletes ${name} on this device too.`,
  decisions: (all: number, fresh: number) =>
    `${sentence(count(all, 'decision', 'decisions'))} (rulings, settings, sets); ${fresh === 0 ? 'none' : fresh} new.`,
  later: (later: number) =>
    `${sentence(count(later, 'record', 'records'))} of a later version: kept, but not shown by this one.`,
  nothingNew: 'Everything in it is here already.',
  bringIn: (fresh: number) => `Bring in ${recordCount(fresh)}`,
  bringInChild: 'Bring in',
  bringing: 'Bringing in …',
  leave: 'Leave it',
  done: (added: number) => (added === 0 ? 'Nothing was new.' : `${sentence(recordCount(added))} brought in.`),
} as const;

/** `1,204 records`. */
function recordCount(records: number): string {
  return records === 1 ? 'one record' : `${records.toLocaleString('en')} records`;
}

export const yearWords = {
  title: 'School years',
  none: 'No school year has been begun here yet. You need none: the term report takes any span of days.',
  now: (name: string, day: string) => `${name}, begun on ${day}.`,
  lead: 'A new year takes nothing away: children, sets and records go on as they are, and the term report can be asked for by year. A backup before it is a good habit.',
  goOn: (names: string) => `Going on: ${names}. A child who leaves is archived.`,
  toChildren: 'Children and sets',
  name: 'Name of the year',
  fault: 'A school year needs a name of up to 40 letters.',
  begin: 'Begin a school year today',
  begun: (name: string) => `${name} has begun today.`,
} as const;

export const decisionWords = {
  title: 'What was decided',
  lead: 'Every ruling and every change of settings, the newest first. Each can be taken back, and put back again; both are records too.',
  open: 'Show what was decided',
  none: 'Nothing has been decided yet.',
  takeBack: 'Take back',
  putBack: 'Put back',
  wasTaken: 'taken back',
  takenBack: 'Taken back.',
  isBack: 'Put back.',
  older: 'Show older ones',
  reading: 'Reading what was decided …',
  aria: (what: string, says: string) => `${what}: ${says}`,
} as const;

export const csvWords = {
  title: 'Tables for a spreadsheet',
  lead: 'Every sitting, or every answer, one a line, as CSV. They are for reading elsewhere; only a backup can be brought in again.',
  sittings: 'Sittings as CSV',
  answers: 'Answers as CSV',
  making: 'Writing the table …',
  made: (name: string) => `“${name}” was written.`,
} as const;
