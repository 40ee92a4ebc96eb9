import type { CDPSession } from 'playwright';

interface TraceEvent {
  readonly name: string;
  readonly cat: string;
  readonly ph: string;
  /** Microseconds on the machine's monotonic clock. */
  readonly ts: number;
  readonly id2?: { readonly local?: string };
  readonly args: {
    readonly data?: { readonly startTime?: number };
    readonly frame_reporter?: { readonly state?: string };
  };
}

const categories = ['cc', 'benchmark', 'viz', 'devtools.timeline', 'blink.user_timing'];

/** Begins a trace; what it returns ends it and gives its events. */
export async function trace(cdp: CDPSession): Promise<() => Promise<readonly TraceEvent[]>> {
  const events: TraceEvent[] = [];
  const take = ({ value }: { readonly value: object[] }) => {
    for (const event of value as TraceEvent[]) events.push(event);
  };
  cdp.on('Tracing.dataCollected', take);
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: categories },
  });
  return async () => {
    const complete = new Promise((resolve) => cdp.once('Tracing.tracingComplete', resolve));
    await cdp.send('Tracing.end');
    await complete;
    cdp.off('Tracing.dataCollected', take);
    return events.toSorted((x, y) => x.ts - y.ts);
  };
}

/** Marks each card as it comes into the page, so that a trace shows it; runs in the page, before it. */
export function markCards(): void {
  new MutationObserver((changes) => {
    for (const { addedNodes } of changes) {
      for (const node of addedNodes) {
        const card =
          node instanceof Element
            ? (node.closest('[id^="card-"]') ?? node.querySelector('[id^="card-"]'))
            : null;
        if (card) performance.mark(`shown ${card.id}`);
      }
    }
  }).observe(document, { childList: true, subtree: true });
}

/**
 * When each card was truly on the screen, ms on the page's clock: the end of the frame whose commit was the first after
 * the card had come into the page. Frames that were not presented are no frames.
 */
export function presentedCards(events: readonly TraceEvent[]): ReadonlyMap<string, number> {
  const marks = events.filter(({ name, cat }) => cat.includes('user_timing') && name.startsWith('shown '));
  const [first] = marks;
  if (!first) return new Map();
  const originUs = first.ts - (first.args.data?.startTime ?? 0) * 1000;
  const frames = framesOf(events);
  const presented = new Map<string, number>();
  for (const { name, ts } of marks) {
    const frame = frames.find(({ commitUs }) => commitUs >= ts);
    const card = name.slice('shown '.length);
    if (frame && !presented.has(card)) presented.set(card, (frame.endUs - originUs) / 1000);
  }
  return presented;
}

interface Frame {
  readonly commitUs: number;
  readonly endUs: number;
}

/** Frames with a commit that were presented, in the order of their commits. */
function framesOf(events: readonly TraceEvent[]): readonly Frame[] {
  const open = new Map<string, { commitUs: number | null; isPresented: boolean }>();
  const frames: Frame[] = [];
  for (const { name, cat, ph, ts, id2, args } of events) {
    const id = id2?.local;
    if (id === undefined || !cat.includes('timeline.frame')) continue;
    if (name === 'PipelineReporter' && ph === 'b') {
      open.set(id, {
        commitUs: null,
        isPresented: args.frame_reporter?.state?.includes('PRESENTED') ?? false,
      });
    }
    const frame = open.get(id);
    if (!frame) continue;
    if (name === 'Commit' && ph === 'b') frame.commitUs = ts;
    if (name === 'PipelineReporter' && ph === 'e') {
      if (frame.commitUs !== null && frame.isPresented) frames.push({ commitUs: frame.commitUs, endUs: ts });
      open.delete(id);
    }
  }
  return frames.toSorted((x, y) => x.commitUs - y.commitUs || x.endUs - y.endUs);
}
