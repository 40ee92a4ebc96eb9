import { describe } from 'vitest';
import { checkEverySet, seedsPerSet } from './every-set';

describe.each(['add', 'sub'] as const)(
  `${seedsPerSet} seeds keep every rule in every set of %s`,
  checkEverySet,
);
