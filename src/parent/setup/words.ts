export const setupWords = {
  steps: {
    storage: 'Before you begin',
    restore: 'Restore from a file',
    pin: 'Choose a PIN',
    code: 'Write this down',
    child: 'A child',
    known: 'What is known already?',
    set: 'The first set',
    done: 'Ready',
  },
  step: (at: number, of: number) => `Step ${at} of ${of}`,
  goOn: 'Go on',
  back: 'Back',
  cancel: 'Cancel',
  later: 'Go on another time',

  homeScreen:
    'If this device can put Sumstitch on its home screen, do that first and open it from there. Some devices keep the two apart: what you set up here would not be found there.',
  howToInstall: 'Look in the browser’s menu for “Install” or “Add to home screen”.',
  isInstalled: 'Sumstitch is running from the home screen, as it should.',
  staysHere: 'Nothing you type leaves this device.',

  restore: 'I have a file to restore',
  restoreLead:
    'A backup of Sumstitch that you saved before, here or on another device. It holds no PIN: you choose a new one afterwards.',
  withoutFile: 'Begin without a file',

  pinLead:
    'The PIN opens the parent’s pages. It keeps children out; it does not encrypt what is on the device.',
  keepPin: 'Go on',

  codeLead:
    'This is the recovery code. If you forget the PIN, it lets you choose a new one, and nothing is lost. It is shown this once.',

  childLead: 'Each child needs a name and a woven edge to know their own cloth by.',
  childName: 'Name',
  anotherEdge: 'Draw another edge',
  edgeNumber: (number: number) => `Edge ${number}`,
  edge: (name: string) => `The woven edge of ${name || 'the new child'}`,

  way: (name: string) => `How shall Sumstitch learn what ${name} knows?`,
  wayTick: 'I tick what is known.',
  waySpread: (name: string) => `It asks ${name} a few facts from every set, on two days.`,
  knownLead: (name: string) =>
    `Tick what ${name} answers without working it out. Leave it empty if you are not sure; you can change it at any time.`,
  spreadLead: (name: string) =>
    `${name}’s first two sheets ask 20 to 25 facts each, without a clock. Then Today proposes which sets to keep and which to begin with; nothing is decided without you.`,

  setLead: (name: string) => `These are the facts ${name} learns first, without a clock.`,
  proposed: (name: string) => `Proposed: ${name}, the first in the usual order that is not wholly ticked.`,
  noneLeft: 'Everything is ticked, so there is no set to propose. Choose one to keep in practice.',
  set: 'Set',
  startSet: (name: string | null) => (name === null ? 'Choose a set' : `Start with “${name}”`),

  doneTitle: (name: string) => `${name} can begin`,
  doneLead: (name: string, set: string) =>
    `${name} begins with “${set}”, one sheet a day, without a clock. The first time, Sumstitch tells ${name} that a grown-up sees the answers.`,
  doneSpread: (name: string, ops: string) =>
    `${name} begins with a few facts from every set of ${ops}, without a clock, today and on the next school day. Then Today proposes the sets. The first time, Sumstitch tells ${name} that a grown-up sees the answers.`,
  clockLater:
    'When the set is accurate the tool will propose the clock. It is yours to turn on, or to leave off.',
  knot: 'This knot stands at the top left of every child’s screen. Press it and type the PIN to come back here.',
  handOver: (name: string) => `Hand over to ${name}`,
  another: 'Add another child',
  pages: 'Go to the parent’s pages',
} as const;

export const nameFaults = {
  empty: 'Every child needs a name.',
  taken: 'There is a child with this name already. Add a letter or a second name to tell them apart.',
  tooLong: 'A name can have up to 30 letters.',
} as const;
