import type { Page } from './place';

const pageNames: Record<Page, string> = {
  today: 'Today',
  marking: 'Marking',
  facts: 'Facts',
  overTime: 'Over time',
  paper: 'Paper',
  children: 'Children and sets',
  sittings: 'Sittings',
  recordBook: 'Record book',
  settings: 'Settings',
  about: 'About',
  spoken: 'Spoken check',
  monday: 'What to teach on Monday',
};

export const insideWords = {
  pages: 'Pages',
  page: pageNames,
  openPages: (page: string) => `Pages: ${page}`,
  lock: 'Lock',
  boat: 'The boat is an invented household; nothing you do here touches yours.',
  leaveBoat: 'Leave the boat',
  later: (count: number) =>
    count === 1
      ? 'One record was made by a newer version of Sumstitch. It is kept, but this version can’t show it. Load the page again to get the newer one.'
      : `${count} records were made by a newer version of Sumstitch. They are kept, but this version can’t show them. Load the page again to get the newer one.`,
  historyLoading: 'Reading the sittings …',
} as const;

/** `one row`, `two rows`, `12 rows`. */
export function count(number: number, one: string, many: string): string {
  const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
  return `${small[number] ?? number} ${number === 1 ? one : many}`;
}

/** A sentence's first letter made large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
