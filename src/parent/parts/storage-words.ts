/** What the browser says of keeping things, in the same words at set-up and in About. */
const storageWords = {
  kept: 'The browser keeps what is stored here.',
  mayBeCleared:
    'The browser may clear pages that are not opened for a week. On the home screen it keeps them.',
  notKnown: 'The browser does not say whether it keeps what is stored here.',
} as const;

/** What the browser promises; `null` where it does not say. */
export function storageText(persisted: boolean | null): string {
  if (persisted === null) return storageWords.notKnown;
  return persisted ? storageWords.kept : storageWords.mayBeCleared;
}
