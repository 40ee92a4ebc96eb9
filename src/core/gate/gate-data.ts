/** What is kept of a secret instead of the secret: PBKDF2-HMAC-SHA-256, base64, with its own salt and rounds. */
export interface KeptSecret {
  readonly salt: string;
  readonly hash: string;
  readonly rounds: number;
}

/**
 * All that is stored of the parent's gate. `tries` counts wrong tries since the gate last opened; `waitDue`
 * says that the wait after the last of them has not been sat out yet. No clock time is kept: setting the
 * device's clock moves nothing.
 */
export interface GateData {
  readonly v: 1;
  readonly pin: KeptSecret;
  readonly recovery: KeptSecret;
  readonly tries: number;
  readonly waitDue: boolean;
}

/** Where the gate's data lives; `null` before the first set-up. */
export interface GateStore {
  read(): Promise<GateData | null>;
  write(data: GateData): Promise<void>;
}

/** The data after a wrong try, written before the try is checked so that a closed page gives no free one. */
export function withTryCounted(data: GateData): GateData {
  return { ...data, tries: data.tries + 1, waitDue: true };
}

/** The data once the wait has been sat out. */
export function withWaitServed(data: GateData): GateData {
  return { ...data, waitDue: false };
}

/** The data after the gate opened. */
export function withTriesForgotten(data: GateData): GateData {
  return { ...data, tries: 0, waitDue: false };
}
