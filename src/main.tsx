import './first.css';
import { effect, signal, useSignal } from '@preact/signals';
import { type FunctionComponent, render } from 'preact';
import { useEffect } from 'preact/hooks';
import { ChildSide } from './child/child-side';
import { Starting } from './child/starting';
import { TroubleScreen } from './child/trouble-screen';
import type { LogTrouble } from './log/trouble';
import { loadSoundsWhenIdle, play, setMuted } from './sound/sound';
import { type App, openApp } from './state/app';
import { browserPorts } from './state/ports';
import { isSecure, showInsecurePage } from './worker/insecure-page';
import { lookForUpdate, registerWorker, reloadToIsolate, takeOver } from './worker/register';

/** The address of the demo household, so that a reload stays on the boat. */
const boatAddress = '#boat';
const lookForUpdateEveryMs = 6 * 3_600_000;

const isBoat = location.hash === boatAddress;

async function openHousehold(): Promise<App | LogTrouble> {
  if (!isBoat) return openApp(browserPorts, play);
  const { boatName, prepareBoat } = await import('./demo/boat');
  await prepareBoat(browserPorts);
  return openApp(browserPorts, play, boatName);
}

/** The parent's side with its gate; code and gate are fetched when a grown-up first asks. */
async function fetchGrownUps(app: App): Promise<FunctionComponent> {
  const [{ ParentSide }, gate] = await Promise.all([import('./parent/parent-side'), fetchGate(app)]);
  return () => <ParentSide desk={app.desk} gate={gate} onBack={app.kiosk.closeGrownUps} />;
}

async function fetchGate(app: App) {
  if (isBoat) return (await import('./demo/boat')).boatGate();
  const { createGate } = await import('./state/gate');
  return createGate(app.gateStore);
}

function Household({ app }: { readonly app: App }) {
  const screen = app.kiosk.screen.value;
  const { trouble } = app.desk.storage.value;
  if (screen.on === 'grownUps') return <GrownUps app={app} />;
  const isSitting = screen.on === 'sitting';
  return (
    <>
      <ChildSide app={app} screen={screen} onVisit={() => goTo(boatAddress)} />
      {isBoat && !isSitting && (
        <button type="button" class="leave-boat" onClick={() => goTo('')}>
          Leave the boat
        </button>
      )}
      {trouble && !isSitting && (
        <p class="fetch-grown-up" role="alert">
          Please fetch a grown-up
        </p>
      )}
    </>
  );
}

const grownUps = signal<FunctionComponent | null>(null);

function GrownUps({ app }: { readonly app: App }) {
  const hasFailed = useSignal(false);
  useEffect(() => {
    void app.openDesk();
    const fetched = grownUps.value ? Promise.resolve() : fetchInto(app);
    fetched.catch(() => {
      hasFailed.value = true;
    });
    return app.closeDesk;
  }, [app]);
  if (grownUps.value) return <grownUps.value />;
  return hasFailed.value ? (
    <main class="plain-page">
      <p role="alert">
        This part could not be fetched. Check the connection once; after that it works offline.
      </p>
      <button type="button" onClick={app.kiosk.closeGrownUps}>
        Back
      </button>
    </main>
  ) : (
    <Starting />
  );
}

async function fetchInto(app: App): Promise<void> {
  const component = await fetchGrownUps(app);
  grownUps.value = component;
}

function goTo(address: string): void {
  // Another household is another page: nothing of the one can reach the other.
  location.hash = address;
  location.reload();
}

async function start(root: HTMLElement): Promise<void> {
  const opened = await openHousehold();
  if (!('kiosk' in opened)) {
    render(<TroubleScreen trouble={opened} onAgain={() => location.reload()} />, root);
    return;
  }
  effect(() => setMuted(!opened.desk.household.value.settings.sounds));
  render(<Household app={opened} />, root);
  loadSoundsWhenIdle();
  joinWorker(opened);
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

const root = document.getElementById('app');
if (root && isSecure()) {
  render(<Starting />, root);
  void start(root);
} else if (root) {
  showInsecurePage(root);
}
