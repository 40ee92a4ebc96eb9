export const partWords = {
  kept: 'Kept.',
  undo: 'Undo',
  takenBack: 'Taken back.',
  child: 'Child',
  everyone: 'Everyone',
} as const;
