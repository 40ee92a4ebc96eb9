import type { LogTrouble } from '../log/trouble';

export type { LogTrouble };

/** How safely this device keeps what is recorded. */
export interface StorageState {
  /** Whether the browser has promised to keep it; `null` when it cannot be asked. */
  readonly persisted: boolean | null;
  readonly trouble: LogTrouble | null;
  /** Answers and records not on the disk yet. */
  readonly waiting: number;
  /** Records made by a later version of the app: kept, but not understood. */
  readonly later: number;
}

/** Asks the browser to keep what is stored; `null` where there is nobody to ask. */
export async function askToPersist(): Promise<boolean | null> {
  // Absent at an insecure address and in a few private windows.
  if (!navigator.storage?.persist) return null;
  return navigator.storage.persist().catch(() => null);
}
