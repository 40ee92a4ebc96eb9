/**
 * Why the store does not take or give. `refused`: the browser keeps nothing here (a private window). `full`: no
 * room. `later`: a later version of the app has been at work. `blocked`: another tab holds an old version open.
 * `gone`: what was kept has been erased, or the connection is lost for good.
 */
export interface LogTrouble {
  readonly what: 'refused' | 'full' | 'later' | 'blocked' | 'gone' | 'unknown';
}

/** Thrown by every read and write that fails. */
export class LogTroubleError extends Error {
  readonly trouble: LogTrouble;

  constructor(what: LogTrouble['what'], cause?: unknown) {
    super(`The log: ${what}`, { cause });
    this.trouble = { what };
  }
}

/** Names the trouble behind anything thrown by the store. `opening`: while the database was being opened. */
export function troubleOf(error: unknown, opening = false): LogTroubleError {
  if (error instanceof LogTroubleError) return error;
  return new LogTroubleError(whatOf((error as DOMException | null)?.name, opening), error);
}

function whatOf(name: string | undefined, opening: boolean): LogTrouble['what'] {
  switch (name) {
    case 'QuotaExceededError':
      return 'full';
    case 'VersionError':
      return 'later';
    case 'SecurityError':
    case 'NotAllowedError':
    case 'ReferenceError':
      return 'refused';
    case 'InvalidStateError':
      return opening ? 'refused' : 'gone';
    default:
      return 'unknown';
  }
}
