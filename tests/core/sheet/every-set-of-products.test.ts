import { describe } from 'vitest';
import { checkEverySet, seedsPerSet } from './every-set';

describe.each(['mul', 'div'] as const)(
  `${seedsPerSet} seeds keep every rule in every set of %s`,
  checkEverySet,
);
