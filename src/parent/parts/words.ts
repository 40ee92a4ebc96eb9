export const partWords = {
  kept: 'Kept.',
  undo: 'Undo',
  takenBack: 'Taken back.',
  child: 'Child',
  everyone: 'Everyone',
  fetching: 'Opening …',
  notFetched: 'This part could not be fetched. Go online once; after that it works without.',
} as const;
