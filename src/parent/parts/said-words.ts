export const saidWords = {
  how: 'How do you know?',
  words: 'What do the words mean?',
} as const;
