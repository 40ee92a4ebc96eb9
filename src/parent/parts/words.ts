export const partWords = {
  kept: 'Kept.',
  undo: 'Undo',
  takenBack: 'Taken back.',
  child: 'Child',
  everyone: 'Everyone',
  fetching: 'Opening …',
  notFetched: 'This part could not be fetched. Go online once; after that it works without.',
  held: 'What was answered since then is held by this page alone. Keep the page open: it is stored by itself as soon as that can be. To be on the safe side, save everything to a file; the record book can bring it in again.',
  saveHeld: 'Save everything to a file',
  heldSaved: (name: string) => `“${name}” was given out.`,
} as const;
