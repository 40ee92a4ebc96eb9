import type { PinFault } from '../../core/gate/pin-rule';
import type { CodeFault } from '../../core/gate/recovery-code';
import type { TryResult } from '../../state/gate';

const pinFaults: Record<PinFault, string> = {
  empty: 'Type the PIN first.',
  notDigits: 'A PIN has only digits, 0 to 9.',
  tooShort: 'A PIN has at least 4 digits.',
  tooLong: 'A PIN has at most 8 digits.',
};

const codeFaults: Record<CodeFault, string> = {
  empty: 'Type the recovery code first.',
  length: 'A recovery code has 16 letters and digits. Check that none is missing.',
  signs: 'There is a sign in it that no recovery code has. It has only letters and digits.',
};

const storageTrouble =
  'This device could not store anything just now; a full disk does that. Nothing is lost. Make some room and try again.';

export const gateWords = {
  title: 'For grown-ups',
  lead: 'Type the PIN to open the parent’s pages.',
  pin: 'PIN',
  showDigits: 'Show the digits',
  open: 'Open',
  checking: 'Checking …',
  notNoted:
    'This device cannot store anything just now, as when its disk is full, and so cannot count tries. This one is looked at in a minute. Loading the page again begins the minute again.',
  back: 'Back to the cloth',
  forgot: 'Forgot the PIN?',
  recoverTitle: 'Forgot the PIN?',
  recoverLead:
    'Type the recovery code you wrote down at set-up. Nothing is lost: afterwards you choose a new PIN.',
  code: 'Recovery code',
  codeHint: '16 letters and digits. Small letters, spaces and hyphens don’t matter.',
  useCode: 'Use the code',
  backToPin: 'Back to the PIN',
  renewTitle: 'Choose a new PIN',
  renewLead: 'The recovery code stays the same. Keep it.',
  newPin: 'New PIN',
  newPinAgain: 'The same PIN again',
  pinHint: '4 to 8 digits.',
  saveNew: 'Keep this PIN',
  notTheSame: 'The two PINs are not the same.',
  loading: 'One moment …',
  notFetched: 'The parent’s pages could not be fetched. Load this page again; nothing is lost.',
  storageShut:
    'This browser does not let Sumstitch reach its storage, so it can’t tell your PIN. A private window does that, and so does a full disk. Open it in an ordinary window, or make some room, and load the page again. Nothing that was kept is lost.',
  storageTrouble,
  pinFault: (fault: PinFault) => pinFaults[fault],
  waitBegins: (ms: number) => `That was not the PIN. Wait ${seconds(ms)}, then try again.`,
  waitStands: (ms: number) => `There were wrong tries before. Wait ${seconds(ms)}, then try again.`,
  waitLeft: (ms: number) => `${seconds(ms)} to wait.`,
  waitOver: 'You can try again now.',
} as const;

export const codeWords = {
  copy: 'Copy',
  copied: 'Copied.',
  notCopied: 'This browser did not allow copying. Write it down by hand.',
  isWritten: 'I have written it down',
  writeFirst: 'Write the code down first, then tick the box.',
  codeTrouble: 'The PIN could not be stored. The code above stays the same. Make some room and try again.',
  goOn: 'Go on',
} as const;

/** What to say after a try with the PIN; `null` when it opened. */
export function pinSentence(result: TryResult): string | null {
  switch (result) {
    case 'opened':
      return null;
    case 'wrong':
      return 'That was not the PIN. Try again.';
    case 'waiting':
      return 'The wait is not over yet. Your digits stay where they are.';
    case 'trouble':
      return storageTrouble;
    case 'length':
    case 'signs':
      return codeFaults[result];
    case 'empty':
    case 'notDigits':
    case 'tooShort':
    case 'tooLong':
      return pinFaults[result];
  }
}

/** What to say after a try with the recovery code; `null` when it was right. */
export function codeSentence(result: TryResult): string | null {
  switch (result) {
    case 'wrong':
      return 'That is not this household’s recovery code. Check each sign and try again.';
    case 'waiting':
      return gateWords.checking;
    case 'empty':
    case 'length':
    case 'signs':
      return codeFaults[result];
    default:
      return pinSentence(result);
  }
}

function seconds(ms: number): string {
  const count = Math.ceil(ms / 1000);
  return count === 1 ? '1 second' : `${count} seconds`;
}
