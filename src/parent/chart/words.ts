export const chartWords = {
  table: 'The same as a table',
} as const;
