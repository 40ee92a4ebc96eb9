import { parsePrompt } from '../../src/core/fact/prompt';
import type { Step } from '../../src/core/plan/step';
import type { Draft } from '../../src/core/record/record';
import type { Key, Sat } from '../../src/core/record/sat';
import { isLog, type Log, openLog } from '../../src/log/log';
import { type App, openApp } from '../../src/state/app';
import type { Screen } from '../../src/state/screen';
import type { SittingRun } from '../../src/state/sitting-run';
import { type FakePorts, fakePorts } from './fake-ports';

let homes = 0;

/** A database name no other test uses. */
function homeName(): string {
  homes += 1;
  return `home-test-${Date.now()}-${homes}`;
}

/** What a test opens a household with; the same name again is the same device after a reload. */
export interface Opening {
  readonly name?: string;
  readonly ports?: FakePorts;
  readonly records?: readonly Draft[];
}

export interface Home {
  readonly app: App;
  readonly name: string;
  readonly ports: FakePorts;
  /** What has sounded, in order. */
  readonly sounds: readonly string[];
}

/** A whole household over a real store, with time in the test's hands. */
export async function openHome({
  name = homeName(),
  ports = fakePorts(),
  records = [],
}: Opening = {}): Promise<Home> {
  const sounds: string[] = [];
  const app = await openApp(ports, (sound) => sounds.push(sound), await openOn(name, ports));
  if (records.length > 0) await app.desk.record(records);
  return { app, name, ports, sounds };
}

/** A child with a set, ready for a first sheet of five; without card rounds unless they are asked for. */
export function childDrafts(
  child: string,
  name: string,
  over: { readonly timed?: boolean; readonly cards?: boolean } = {},
): readonly Draft[] {
  return [
    { kind: 'childAdded', child, name, edge: name.length },
    { kind: 'childSettingsChanged', child, changes: { length: 5, cards: false, ...over } },
    { kind: 'setStarted', child, set: 'times-3' },
  ];
}

/** The screen, said to be of a kind. */
export function on<On extends Screen['on']>({ app }: Home, kind: On): Extract<Screen, { on: On }> {
  const screen = app.kiosk.screen.value;
  if (screen.on !== kind) throw new Error(`The screen is ${screen.on}, not ${kind}.`);
  return screen as Extract<Screen, { on: On }>;
}

export type Does = 'right' | 'wrong' | 'skip';

/** Looks at the card on the screen for a second and does something with it. */
export function answer(run: SittingRun, ports: FakePorts, does: Does = 'right'): void {
  const { showing, prompt } = run.card.value;
  run.shown(showing, ports.monotonic(), 'element');
  ports.pass(1000);
  for (const key of keysFor(prompt, does)) {
    if (run.card.value.showing !== showing || run.isAway.value) return;
    run.press(key, ports.monotonic(), 'keys');
  }
}

/** Sits the whole sitting that is on the screen; `does` says what is done with the nth card. */
export function sitAll(home: Home, does: (card: number) => Does = () => 'right'): void {
  for (let card = 0; home.app.kiosk.screen.value.on === 'sitting'; card += 1) {
    if (card > 200) throw new Error('The sitting does not end.');
    answer(on(home, 'sitting').run, home.ports, does(card));
  }
}

/** Takes the step that is on the screen, and sits it where it has cards. */
export function takeStep(home: Home, does?: (card: number) => Does): string {
  const { step } = on(home, 'next');
  home.app.kiosk.goOn(step);
  sitAll(home, does);
  return step.what;
}

/** Goes through the day up to a step, all right, past cards the child may leave out; the step itself is not taken. */
export function goTo(home: Home, what: Step['what']): void {
  const { kiosk } = home.app;
  for (let steps = 0; steps < 20; steps += 1) {
    const screen = kiosk.screen.value;
    if (screen.on === 'yours') kiosk.leaveYours();
    else if (screen.on === 'piece') kiosk.leavePiece();
    else if (screen.on !== 'next' || screen.step.what === what) return;
    else if (screen.step.what === 'cards' && screen.step.isChoice) kiosk.goStraight();
    else takeStep(home);
    const { value: now } = kiosk.screen;
    if (now.on === 'sitting') {
      if (now.run.plan.purpose === what) return;
      sitAll(home);
    }
  }
}

/** Goes through all that is left of the day, all right, to its rest. */
export function goToRest(home: Home): void {
  goTo(home, 'piece');
}

/** Waits until all that was given to the store is in it. */
export async function settled({ app }: Home): Promise<void> {
  await app.readWholeCloth('nobody');
}

/** Every sitting recorded for a child. */
export async function sats({ app }: Home, child: string): Promise<readonly Sat[]> {
  return (await app.readWholeCloth(child)).map(({ sat }) => sat);
}

/** Another hand on the same store. */
export function logOf({ name, ports }: Home): Promise<Log> {
  return openOn(name, ports);
}

async function openOn(name: string, ports: FakePorts): Promise<Log> {
  const log = await openLog(ports, name);
  if (!isLog(log)) throw new Error(`no log: ${log.what}`);
  return log;
}

function keysFor(id: string, does: Does): readonly Key[] {
  if (does === 'skip') return ['skip'];
  const answer = `${parsePrompt(id)?.answer ?? 0}`;
  const given = does === 'right' ? answer : answer.replace(/\d$/, (digit) => (digit === '9' ? '8' : '9'));
  return [...(given.split('') as Key[]), 'done'];
}
