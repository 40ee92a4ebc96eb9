/** Where the count right by the bell falls: a weave's firmness, from closest to most open. */
export type Band = 'firm' | 'even' | 'loose' | 'thin';

/** From the top band to the lowest. */
export const bands: readonly Band[] = ['firm', 'even', 'loose', 'thin'];
