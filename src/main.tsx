import './ui/tokens.css';
import './ui/cloth.css';
import './first.css';
import { render } from 'preact';
import { Starting } from './child/starting';
import { Welcome } from './child/welcome';
import { Whose } from './child/whose';
import { boatAddress, goTo, isBoat } from './place';
import { type First, openFirst } from './state/first';
import { browserPorts } from './state/ports';

/** What a first tap asked for before the rest of the code was there. */
type Asked = { readonly child: string } | 'grownUps' | 'restore' | null;

async function start(root: HTMLElement): Promise<void> {
  // Asked for at once and used when the log is open: the first screen does not wait for it.
  const fetched = import('./household');
  const boat = isBoat ? await import('./demo/boat') : null;
  const trouble = await boat?.prepareBoat(browserPorts);
  const opened = trouble ?? (await openFirst(browserPorts, boat?.boatName));
  if (!('log' in opened)) {
    const { TroubleScreen } = await import('./child/trouble-screen');
    render(<TroubleScreen trouble={opened} onAgain={() => location.reload()} />, root);
    return;
  }
  let asked: Asked = null;
  const ask = (next: Asked) => {
    asked = next;
  };
  render(<FirstScreen first={opened} ask={ask} />, root);
  const { openHousehold, openRestore, Household } = await fetched;
  const house = await openHousehold(opened, boat?.boatGate() ?? null);
  render(<Household house={house} />, root);
  if (asked === 'restore') openRestore(house);
  else answer(asked, house.app.kiosk);
}

interface FirstScreenProps {
  readonly first: First;
  readonly ask: (asked: Asked) => void;
}

/** The screen that needs no more than the household's names; a tap on it is kept until it can be answered. */
function FirstScreen({ first: { household, active }, ask }: FirstScreenProps) {
  const here = household.children.filter(({ archived }) => !archived);
  const onGrownUps = () => ask('grownUps');
  if (here.length === 0)
    return (
      <Welcome onBegin={onGrownUps} onVisit={() => goTo(boatAddress)} onRestore={() => ask('restore')} />
    );
  if (here.some(({ id }) => id === active)) return <Starting />;
  return <Whose children={here} onChoose={(child) => ask({ child })} onGrownUps={onGrownUps} />;
}

function answer(
  asked: Exclude<Asked, 'restore'>,
  kiosk: { pick(child: string): void; openGrownUps(): void },
): void {
  if (asked === 'grownUps') kiosk.openGrownUps();
  else if (asked) kiosk.pick(asked.child);
}

const root = document.getElementById('app');
if (root && isSecureContext) {
  render(<Starting />, root);
  void start(root);
} else if (root) {
  void import('./worker/insecure-page').then(({ showInsecurePage }) => showInsecurePage(root));
}
