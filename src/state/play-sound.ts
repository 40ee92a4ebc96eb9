/** Plays one of the sounds of a child's side; none is for a wrong answer. */
export type PlaySound = (name: 'start' | 'bell' | 'finished') => void;
