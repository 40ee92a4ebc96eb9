/** Why a file could not be read, in words for a parent. */
export interface FileTrouble {
  readonly what: 'notOurs' | 'later' | 'damaged' | 'tooLarge';
  readonly reason: string;
}

export const notWhole = damaged('The file is not whole: it cannot be read as JSON.');

export const notOurs: FileTrouble = {
  what: 'notOurs',
  reason: 'This is not a file of Sumstitch records.',
};

export const laterFile: FileTrouble = {
  what: 'later',
  reason: 'A later version of Sumstitch made this file. Load the page again to get it.',
};

export const tooLarge: FileTrouble = {
  what: 'tooLarge',
  reason: 'This file is far larger than a household’s records can be, so it was not read.',
};

export function damaged(reason: string): FileTrouble {
  return { what: 'damaged', reason };
}

/** A record of a kind that this version does not know, by its number in the file, from 1. */
export function unknownKind(number: number): FileTrouble {
  return {
    what: 'later',
    reason: `Record ${number} in the file is of a kind that this version doesn’t know. Load the page again to get the newest version; if it says the same, the file is damaged in record ${number} (“kind”).`,
  };
}
