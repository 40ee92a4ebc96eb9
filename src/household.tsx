import { effect, signal, useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import { ChildSide } from './child/child-side';
import { Starting } from './child/starting';
import { boatAddress, goTo, isBoat } from './place';
import { loadSoundsWhenIdle, play, setMuted } from './sound/sound';
import { type App, openApp } from './state/app';
import type { First } from './state/first';
import type { Gate } from './state/gate';
import { browserPorts } from './state/ports';
import { lookForUpdate, registerWorker, reloadToIsolate, takeOver } from './worker/register';

const lookForUpdateEveryMs = 6 * 3_600_000;

/** A household with everything that moves in it; `gate` is there only where the boat brings its own. */
export interface House {
  readonly app: App;
  readonly gate: Gate | null;
}

/** Joins log, screens, sounds and worker. Fetched while the first screen is up. */
export async function openHousehold(first: First, gate: Gate | null): Promise<House> {
  const app = await openApp(browserPorts, play, first.log);
  effect(() => setMuted(!app.desk.household.value.settings.sounds));
  loadSoundsWhenIdle();
  joinWorker(app);
  return { app, gate };
}

/** A new version is taken between sittings only, and so is the one reload that isolates a first visit's page. */
function joinWorker(app: App): void {
  const isControlled = signal(false);
  const isWaiting = signal(false);
  effect(() => {
    if (!app.kiosk.isBetween.value) return;
    if (isWaiting.value) takeOver();
    else if (isControlled.value) reloadToIsolate();
  });
  void registerWorker({
    onControlled: () => {
      isControlled.value = true;
    },
    onWaiting: () => {
      isWaiting.value = true;
    },
  });
  const look = () => {
    void lookForUpdate();
    browserPorts.after(lookForUpdateEveryMs, look);
  };
  browserPorts.after(lookForUpdateEveryMs, look);
}

/** Whatever is up: a child's screen or the grown-ups' side. */
export function Household({ house }: { readonly house: House }) {
  const { app } = house;
  const screen = app.kiosk.screen.value;
  const { trouble } = app.desk.storage.value;
  if (screen.on === 'grownUps') return <GrownUps house={house} />;
  const isSitting = screen.on === 'sitting';
  return (
    <>
      {trouble && !isSitting && (
        <p class="fetch-grown-up" role="alert">
          Please fetch a grown-up
        </p>
      )}
      <ChildSide
        app={app}
        screen={screen}
        onVisit={() => goTo(boatAddress)}
        onRestore={() => openRestore(house)}
      />
      {isBoat && !isSitting && (
        <button type="button" class="leave-boat" onClick={() => goTo('')}>
          Leave the boat
        </button>
      )}
    </>
  );
}

const isRestoring = signal(false);

/** Opens the grown-ups' side at the file to restore. */
export function openRestore({ app }: House): void {
  isRestoring.value = true;
  app.kiosk.openGrownUps();
}

const grownUps = signal<FunctionComponent | null>(null);

/** The parent's code, fetched when a grown-up first asks for it. */
async function fetchGrownUps({ app, gate }: House): Promise<void> {
  const [{ ParentSide }, { createGate }] = await Promise.all([
    import('./parent/parent-side'),
    import('./state/gate'),
  ]);
  const shut = gate ?? createGate(app.gateStore);
  grownUps.value = () => (
    <ParentSide
      desk={app.desk}
      gate={shut}
      onBack={app.kiosk.closeGrownUps}
      isRestoring={isRestoring.value}
      calledBy={app.kiosk.child.value}
      {...(isBoat ? { onLeaveBoat: () => goTo('') } : {})}
    />
  );
}

function GrownUps({ house }: { readonly house: House }) {
  const { app } = house;
  const hasFailed = useSignal(false);
  useEffect(() => {
    void app.openDesk();
    if (!grownUps.value)
      fetchGrownUps(house).catch(() => {
        hasFailed.value = true;
      });
    return () => {
      isRestoring.value = false;
      app.closeDesk();
    };
  }, [house]);
  if (grownUps.value) return <grownUps.value />;
  if (!hasFailed.value) return <Starting />;
  return (
    <main class="plain-page">
      <p role="alert">This part could not be fetched. Go online once; after that it works without.</p>
      <button type="button" onClick={app.kiosk.closeGrownUps}>
        Back
      </button>
    </main>
  );
}
