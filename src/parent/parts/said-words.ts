export const saidWords = {
  how: 'How do you know?',
  howOf: (text: string) => `How do you know? ${text}`,
} as const;
