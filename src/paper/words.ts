export const paperWords = {
  name: 'Name',
  key: 'Key',
  keys: 'Keys',
  pageOf: (page: number, of: number) => `${page} of ${of}`,
  lines: 'Fill the gaps',
  stories: 'Read, and work it out',
  cloth: (name: string) => `${name}’s long cloth`,
  grid: (name: string, operation: string) => `${name}: ${operation}`,
} as const;
