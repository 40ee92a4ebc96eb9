import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Child } from '../core/household/household';
import type { App } from '../state/app';
import type { Screen } from '../state/screen';
import type { SittingRun } from '../state/sitting-run';
import type { PiecePicture } from '../ui/piece';
import { Ask } from './ask';
import { AwayScreen } from './away';
import { CardScreen } from './card-screen';
import { Elsewhere } from './elsewhere';
import { HandOver } from './hand-over';
import type { KeyIntent } from './keys';
import { LongCloth } from './long-cloth';
import { NextStepScreen } from './next-step-screen';
import { dyeOf, pictureCloth, picturePiece } from './piece-picture';
import { PieceScreen } from './piece-screen';
import { Resting } from './resting';
import { Starting } from './starting';
import { waysOf } from './ways-of';
import { Welcome } from './welcome';
import { Whose } from './whose';
import { Yours } from './yours';

export interface ChildSideProps {
  readonly app: App;
  readonly screen: Exclude<Screen, { on: 'grownUps' }>;
  readonly onVisit: () => void;
  readonly onRestore: () => void;
}

/** The child's side: the one screen that the household's state asks for. */
export function ChildSide({ app, screen, onVisit, onRestore }: ChildSideProps) {
  const { kiosk } = app;
  const onGrownUps = kiosk.openGrownUps;
  const onNotMe = kiosk.hasOthers.value ? kiosk.notMe : undefined;
  switch (screen.on) {
    case 'starting':
      return <Starting />;
    case 'welcome':
      return <Welcome onBegin={onGrownUps} onVisit={onVisit} onRestore={onRestore} />;
    case 'whose':
      return (
        <Whose
          children={screen.children.map(({ child }) => child)}
          onChoose={kiosk.pick}
          onGrownUps={onGrownUps}
        />
      );
    case 'next':
      return <NextStepScreen app={app} {...screen} onNotMe={onNotMe} />;
    case 'yours':
      return (
        <Yours
          facts={screen.facts}
          dye={dyeOf(screen.child.currentSet)}
          edge={screen.child.edge}
          onGoOn={kiosk.leaveYours}
          onGrownUps={onGrownUps}
        />
      );
    case 'sitting':
      return <Sitting key={screen.child.id} app={app} child={screen.child} run={screen.run} />;
    case 'away':
      return (
        <AwayScreen
          edge={screen.child.edge}
          onCarryOn={kiosk.carryOn}
          onGrownUps={onGrownUps}
          onNotMe={onNotMe}
        />
      );
    case 'elsewhere':
      return <Elsewhere onTake={screen.mayTake ? kiosk.sitHere : undefined} onGrownUps={onGrownUps} />;
    case 'ask':
      return <Ask edge={screen.child.edge} onGrownUps={onGrownUps} onNotMe={onNotMe} />;
    case 'piece': {
      const { child, sheet, day } = screen;
      return (
        <PieceScreen
          piece={picturePiece(sheet, day.isDone)}
          edge={child.edge}
          next={day.steps[0]?.what === 'mending' ? 'mend' : 'goOn'}
          onNext={kiosk.leavePiece}
          onGrownUps={onGrownUps}
        />
      );
    }
    case 'rest': {
      const { child, day } = screen;
      const sheet = day.sheets.at(-1);
      return (
        <Resting
          piece={sheet ? picturePiece(sheet, true) : null}
          edge={child.edge}
          isFree={day.isFree}
          onAgain={day.again ? kiosk.again : undefined}
          onLongCloth={kiosk.openCloth}
          onHandOver={kiosk.handOver}
          onGrownUps={onGrownUps}
        />
      );
    }
    case 'handOver':
      return (
        <HandOver
          to={screen.to}
          onTake={() => kiosk.pick(screen.to.id)}
          onBack={kiosk.goBack}
          onGrownUps={onGrownUps}
        />
      );
    case 'cloth':
      return <Cloth app={app} child={screen.child} />;
  }
}

interface SittingProps {
  readonly app: App;
  readonly child: Child;
  readonly run: SittingRun;
}

function Sitting({ app, child, run }: SittingProps) {
  const { edge, settings } = child;
  const { lines } = app.desk.household.value;
  const wayTo = useMemo(() => waysOf({ plan: run.plan, had: hadBy(app, child.id), lines }), [run, lines]);
  // The card listens for as long as it is up, so what it calls must stay the same.
  const onKey = useMemo(
    () =>
      ({ key, atMs, via }: KeyIntent) =>
        run.press(key, atMs, via),
    [run],
  );
  return (
    <CardScreen
      face={run.card}
      entry={run.entry}
      layout={settings.layout}
      order={settings.keypad}
      hand={settings.hand}
      edge={edge}
      clock={run.thread.value}
      rang={run.rang}
      onKey={onKey}
      onShown={run.shown}
      wayTo={wayTo}
      onGrownUps={app.kiosk.openGrownUps}
    />
  );
}

/** What the child has, by the plan of the card round that stands open. */
function hadBy({ desk }: App, child: string): ReadonlySet<string> {
  const cards = desk.days.value.get(child)?.steps.find(({ what }) => what === 'cards');
  return new Set(cards?.what === 'cards' ? cards.had : []);
}

function Cloth({ app, child }: { readonly app: App; readonly child: Child }) {
  const pieces = useSignal<readonly PiecePicture[] | null>(null);
  useEffect(() => {
    void app.readWholeCloth(child.id).then((sittings) => {
      pieces.value = pictureCloth(
        sittings,
        child.settings.limits,
        app.desk.today.value,
        app.desk.days.value.get(child.id)?.isDone ?? false,
      );
    });
  }, [app, child]);
  if (!pieces.value) return <Starting />;
  return (
    <LongCloth
      pieces={pieces.value}
      edge={child.edge}
      onBack={app.kiosk.goBack}
      onGrownUps={app.kiosk.openGrownUps}
    />
  );
}
