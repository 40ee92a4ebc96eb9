import { type ReadonlySignal, signal } from '@preact/signals';
import type { LogRecord } from '../core/record/record';
import type { Sat, SittingPlan, SittingStart } from '../core/record/sat';
import { type Id, recordVersion, type Stamp } from '../core/record/stamp';
import { resumeSitting, type SittingState, sealSitting } from '../core/sitting/machine';
import {
  dropJournal,
  noteAway,
  noteVisit,
  type OpenJournal,
  openJournal,
  openJournals,
  sealJournal,
} from '../log/journal';
import type { Log } from '../log/log';
import type { Ports } from './ports';
import type { Saver } from './saver';
import { type RunListener, type RunSource, type SittingRun, startRun } from './sitting-run';
import { startSitting } from './sitting-start';

/** A sitting that stands open: on the screen, or broken off earlier today. */
export interface OpenSitting {
  readonly id: Id;
  readonly child: Id;
  readonly run: SittingRun;
}

/** Opens sittings, journals each answer as it is given, and seals them into records. */
export interface Sitter {
  readonly open: ReadonlySignal<ReadonlyMap<Id, OpenSitting>>;
  begin(source: RunSource): void;
  /** Takes up what was broken off: today's stand open again, those of other days are sealed as they are. */
  recover(today: string): Promise<void>;
  stop(child: Id): void;
  /** Lets go of what stands open, without an end: another window goes on with it. */
  letGo(): void;
}

/** What a sitting tells the rest of the house. */
export interface SitterNews {
  /** To be shown before it is stored. */
  held(sat: Sat): void;
  sealed(records: readonly LogRecord[]): void;
  /** Once the record is shown. */
  ended(sat: Sat): void;
  bell(): void;
  /** What was answered before to the prompts of a mending taken up again. */
  gave(plan: SittingPlan): readonly (string | null)[];
  /** The highest counter in memory, to show a record before the store has stamped it. */
  highestSeq(): number;
}

export function createSitter(log: Log, ports: Ports, saver: Saver, news: SitterNews): Sitter {
  const open = signal<ReadonlyMap<Id, OpenSitting>>(new Map());
  /** Sittings that another window goes on with: what of them was not stored is kept under an id of its own. */
  const parted = new Map<Id, Id>();

  function begin(source: RunSource): void {
    const id = ports.randomId();
    const start = startSitting(source.plan, ports);
    saver.save(() => openJournal(log, id, source.plan, start));
    put(id, startRun(source, ports, listenerOf(id, start)));
  }

  function listenerOf(id: Id, start: SittingStart): RunListener {
    return {
      visitClosed: (index, visit) => saveOwn(id, () => noteVisit(log, id, index, visit)),
      awayNoted: (index, away) => saveOwn(id, () => noteAway(log, id, index, away)),
      bell: news.bell,
      ended(state) {
        remove(state.plan.child);
        seal(parted.get(id) ?? id, start, state);
      },
    };
  }

  /** Journals unless the journal has passed to another window by then. */
  function saveOwn(id: Id, write: () => Promise<void>): void {
    saver.save(async () => {
      if (!parted.has(id)) await write();
    });
  }

  function seal(id: Id, start: SittingStart, state: SittingState): void {
    if (state.visits.every(({ end }) => end === 'left')) {
      saver.save(() => dropJournal(log, id));
      return;
    }
    const draft = sealSitting(state, start);
    // Shown at once: the child's next step never waits for the disk.
    const sat = provisional(id, draft);
    news.held(sat);
    news.ended(sat);
    saver.save(async () => news.sealed([await sealJournal(log, id, draft)]));
  }

  function provisional(id: Id, draft: Omit<Sat, keyof Stamp>): Sat {
    const at = draft.keepTimes ? ports.now() : draft.startedAt;
    return { ...draft, id, v: recordVersion, seq: news.highestSeq() + 1, device: log.device, at };
  }

  function takeUp({ id, plan, start, visits, away }: OpenJournal): void {
    const gave = news.gave(plan);
    const elapsedMs = elapsedOf(plan, start, visits.at(-1)?.endMs ?? 0);
    put(id, startRun({ plan, gave }, ports, listenerOf(id, start), { visits, away, elapsedMs }));
  }

  /** The gap since the last answer is known by the wall clock only; set back, it counts as none. */
  function elapsedOf(plan: SittingPlan, { startedAt }: SittingStart, lastMs: number): number {
    return plan.keepTimes ? Math.max(lastMs, ports.now() - startedAt) : lastMs;
  }

  function put(id: Id, run: SittingRun): void {
    const { child } = run.plan;
    open.value = new Map(open.value).set(child, { id, child, run });
  }

  function remove(child: Id): void {
    const left = new Map(open.value);
    left.delete(child);
    open.value = left;
  }

  return {
    open,
    begin,
    async recover(today) {
      for (const journal of await openJournals(log)) {
        const state = resumeSitting(journal.plan, journal.visits, journal.away);
        if (state.ended !== null || journal.start.day !== today || open.value.has(journal.plan.child))
          seal(journal.id, journal.start, state);
        else takeUp(journal);
      }
    },
    stop: (child) => open.value.get(child)?.run.stop(),
    letGo() {
      const isAllStored = saver.waiting.peek() === 0;
      for (const { id, run } of open.value.values()) {
        if (isAllStored) run.drop();
        else {
          parted.set(id, ports.randomId());
          run.stop();
        }
      }
      open.value = new Map();
    },
  };
}
