import { type ReadonlySignal, signal } from '@preact/signals';

/** The one place on this device where a child sits: of several windows only one has it. */
export interface Seat {
  readonly isHere: ReadonlySignal<boolean>;
  /** The other window has had time to give way and did not: it may be taken from it. */
  readonly mayTake: ReadonlySignal<boolean>;
  /** Asks for the seat; resolves once it is known whose it is. */
  open(): Promise<void>;
  /** Takes it from the window that has it, which may be frozen and hear nothing. */
  take(): void;
  close(): void;
}

/** What the seat asks and tells of its window. */
export interface SeatTaker {
  /** Whether it may go to another window: nobody is in a sitting here. */
  isFree(): boolean;
  /** It came here: whatever another window was sitting may be taken up. */
  got(): Promise<void>;
  /** It was taken: nothing more may be written to what stands open. */
  lost(): void;
}

/** Long enough for a window that is awake to give way before anything is shown. */
const giveWayMs = 300;
/** A frozen window holds its lock and hears nothing; after this the child may sit here all the same. */
const takeAfterMs = 3000;

/** The seat of a household, by its database name. Where the browser has no locks every window has one of its own. */
export function createSeat(name: string, taker: SeatTaker, locks: LockManager | null): Seat {
  const isHere = signal(false);
  const mayTake = signal(false);
  const wanted = `${name}/seat`;
  const channel = locks && new BroadcastChannel(wanted);
  let letGo = () => {};
  let stopAsking = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isClosed = false;

  /** Resolves to whether the seat was got; once got it is held until it is let go or taken. */
  function ask(options: LockOptions): Promise<boolean> {
    if (!locks) return Promise.resolve(true);
    return new Promise((answer) => {
      const held = locks.request(wanted, options, (lock) => {
        answer(lock !== null);
        if (!lock) return undefined;
        return new Promise<void>((release) => {
          letGo = release;
        });
      });
      held.catch(() => {
        answer(false);
        // Also how a request ends that was called off, and then there is nothing to lose.
        if (isHere.peek()) giveUp();
      });
    });
  }

  function sit(): Promise<void> {
    clearTimeout(timer);
    mayTake.value = false;
    isHere.value = true;
    return taker.got();
  }

  function giveUp(): void {
    isHere.value = false;
    taker.lost();
    void wait();
  }

  /** Stands in line: whoever closes the other window goes on here. */
  async function wait(): Promise<void> {
    clearTimeout(timer);
    timer = setTimeout(() => {
      mayTake.value = true;
    }, takeAfterMs);
    stopAsking = new AbortController();
    if ((await ask({ signal: stopAsking.signal })) && !isClosed) await sit();
  }

  channel?.addEventListener('message', () => {
    if (!isHere.peek() || !taker.isFree()) return;
    isHere.value = false;
    letGo();
    void wait();
  });

  return {
    isHere,
    mayTake,
    async open() {
      if (await ask({ ifAvailable: true })) return sit();
      channel?.postMessage('may I');
      await Promise.race([wait(), new Promise((resolve) => setTimeout(resolve, giveWayMs))]);
    },
    take() {
      stopAsking.abort();
      void ask({ steal: true }).then((isGot) => (isGot ? sit() : undefined));
    },
    close() {
      isClosed = true;
      clearTimeout(timer);
      isHere.value = false;
      stopAsking.abort();
      letGo();
      channel?.close();
    },
  };
}
