import { signal } from '@preact/signals';
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import axe from 'axe-core';
import type { VNode } from 'preact';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { page } from 'vitest/browser';
import { Ask } from '../../src/child/ask';
import { AwayScreen } from '../../src/child/away';
import type { CardFace } from '../../src/child/card';
import { CardScreen, type CardScreenProps } from '../../src/child/card-screen';
import { ChoiceScreen } from '../../src/child/choice';
import { HandOver } from '../../src/child/hand-over';
import { LongCloth } from '../../src/child/long-cloth';
import { Next } from '../../src/child/next';
import type { NextStep } from '../../src/child/pictures';
import { PieceScreen } from '../../src/child/piece-screen';
import { PracticeIntro } from '../../src/child/practice-intro';
import { Resting } from '../../src/child/resting';
import { Told } from '../../src/child/told';
import type { Way } from '../../src/child/way';
import { Welcome } from '../../src/child/welcome';
import { Whose } from '../../src/child/whose';
import { Yours } from '../../src/child/yours';
import type { PiecePicture } from '../../src/ui/piece';
import '../../src/ui/cloth.css';
import '../../src/ui/tokens.css';

beforeAll(() => {
  document.documentElement.lang = 'en';
  document.title = 'Sumstitch';
});
afterEach(cleanup);

const no = () => undefined;
const piece: PiecePicture = {
  seed: 7,
  places: (['stitch', 'hole', 'mended', 'plain', 'loose', 'stitch'] as const).map((state) => ({
    op: 'mul',
    state,
  })),
};
const names = ['Wren', 'Teo', 'Juniper'];
const cloths = names.map((name, index) => ({ id: name, name, edge: index }));
const steps: readonly NextStep[] = [
  'practice',
  'firstTry',
  'cards',
  'sheet',
  'threadSheet',
  'bellSheet',
  'lookBack',
  'row',
  'mend',
  'twin',
  'lines',
  'piece',
];

const taught: Way = {
  line: 'Five 8s and two 8s.',
  picture: {
    what: 'array',
    rows: [
      { count: 5, look: 'one' },
      { count: 2, look: 'other' },
    ],
    columns: [{ count: 8, look: 'one' }],
  },
};

const card = (face: Partial<CardFace> = {}, hasRung = false, more: Partial<CardScreenProps> = {}) => (
  <CardScreen
    face={signal({ showing: 1, prompt: 'mul-7-8', whole: false, wrote: null, ...face })}
    entry={signal('5')}
    layout="across"
    order="phone"
    hand="right"
    edge={2}
    clock={{ allowanceMs: 45_000, elapsedMs: 0, running: true }}
    rang={signal(hasRung)}
    onKey={no}
    onShown={no}
    onGrownUps={no}
    {...more}
  />
);

const screens: Readonly<Record<string, () => VNode>> = {
  welcome: () => <Welcome onBegin={no} onVisit={no} onRestore={no} />,
  whose: () => <Whose children={cloths} onChoose={no} onGrownUps={no} />,
  'hand over': () => (
    <HandOver to={{ id: 't', name: 'Teo', edge: 1 }} onTake={no} onBack={no} onGrownUps={no} />
  ),
  ask: () => <Ask edge={2} onGrownUps={no} onNotMe={no} />,
  'ask, one child': () => <Ask edge={2} onGrownUps={no} />,
  'practice, taken': () => <PracticeIntro takesItself edge={2} onBegin={no} onGrownUps={no} onNotMe={no} />,
  'practice, done key': () => (
    <PracticeIntro takesItself={false} edge={2} onBegin={no} onGrownUps={no} onNotMe={no} />
  ),
  told: () => <Told keepsTimes edge={2} onGoOn={no} onGrownUps={no} onNotMe={no} />,
  'told without times': () => <Told keepsTimes={false} edge={2} onGoOn={no} onGrownUps={no} />,
  card: () => card(),
  'card after the bell': () => card({}, true),
  'number to copy': () => card({ prompt: 'copy-47' }),
  'mend card': () => card({ wrote: '54' }),
  'mend card, whole': () => card({ wrote: '54', whole: true }),
  'new fact with its way': () => card({ whole: true }, false, { wayTo: () => taught, clock: null }),
  'new fact with its way, stacked': () =>
    card({ whole: true }, false, { wayTo: () => taught, clock: null, layout: 'stacked' }),
  'new sum with its way': () =>
    card({ prompt: 'add-9-7', whole: true }, false, {
      wayTo: () => ({
        line: 'Ten and 7, less one.',
        picture: { what: 'frames', parts: (['one', 'gone'] as const).map((look) => ({ count: 8, look })) },
      }),
    }),
  'gap line': () => card({ prompt: 'line-up-5-15-a-0' }),
  'gap line, its rule': () => card({ prompt: 'line-down-12-144-a-2' }),
  'gap line, whole': () => card({ prompt: 'line-up-5-15-a-0', whole: true }),
  story: () => card({ prompt: 'story-plates-div-56-8' }),
  'story, whole': () => card({ prompt: 'story-jars-mul-3-4', whole: true }),
  choice: () => (
    <ChoiceScreen
      sheet="threadSheet"
      dye="woad"
      edge={2}
      onCards={no}
      onStraight={no}
      onGrownUps={no}
      onNotMe={no}
    />
  ),
  yours: () => (
    <Yours facts={['mul-7-2', 'mul-5-7', 'mul-10-7']} dye="woad" edge={2} onGoOn={no} onGrownUps={no} />
  ),
  away: () => <AwayScreen edge={2} onCarryOn={no} onGrownUps={no} onNotMe={no} />,
  'piece with holes': () => <PieceScreen piece={piece} edge={2} next="mend" onNext={no} onGrownUps={no} />,
  piece: () => <PieceScreen piece={piece} edge={2} next="goOn" onNext={no} onGrownUps={no} />,
  resting: () => <Resting piece={piece} edge={2} onLongCloth={no} onHandOver={no} onGrownUps={no} />,
  'resting, again': () => (
    <Resting piece={piece} edge={2} onAgain={no} onLongCloth={no} onHandOver={no} onGrownUps={no} />
  ),
  'free day': () => (
    <Resting piece={null} edge={2} isFree onAgain={no} onLongCloth={no} onHandOver={no} onGrownUps={no} />
  ),
  'long cloth': () => <LongCloth pieces={[piece, piece]} edge={2} onBack={no} onGrownUps={no} />,
  ...Object.fromEntries(
    steps.map((step) => [
      `next, ${step}`,
      () => <Next step={step} stepsLeft={3} edge={2} onBegin={no} onGrownUps={no} onNotMe={no} />,
    ]),
  ),
};

const sizes = [
  [1280, 800],
  [820, 1180],
  [390, 844],
] as const;

const seenWords = () =>
  [...document.querySelectorAll('h1:not(.only-heard), button, p.note, .drawing .done-word')]
    // A heading that is only heard takes no reading.
    .filter((element) => !element.matches('.choice-screen h1'))
    .flatMap((element) => (element.textContent ?? '').split(/\s+/))
    .filter((word) => /[a-z]/i.test(word) && ![...names, 'Sumstitch'].includes(word));

describe.each(Object.entries(screens))('%s', (_name, show) => {
  it('has nothing for axe to find', async () => {
    render(show());
    // Appearing stitches are see-through at first; judge the screen as it stays.
    for (const animation of document.getAnimations()) animation.finish();
    const { violations } = await axe.run(document.body, { rules: { region: { enabled: true } } });
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join()}`)).toEqual([]);
  });

  it('has at most six words', () => {
    render(show());
    expect(seenWords().length, seenWords().join(' ')).toBeLessThanOrEqual(6);
  });

  it('keeps to its card, without scrolling', async () => {
    for (const [width, height] of sizes) {
      await page.viewport(width, height);
      render(show());
      const card = document.querySelector('.card');
      const pad = document.querySelector('.keypad');
      if (card && pad) {
        const [box, keys] = [card.getBoundingClientRect(), pad.getBoundingClientRect()];
        const parts = [
          ...card.querySelectorAll('.fact, .answer, .way, .strategy-picture, .story, .cells, .note'),
        ];
        for (const part of parts) {
          const at = part.getBoundingClientRect();
          const isClear = at.bottom <= keys.top + 1 || at.right <= keys.left + 1 || at.left >= keys.right - 1;
          expect(isClear, `${part.getAttribute('class')} under the keys at ${width} by ${height}`).toBe(true);
          const room = Math.min(at.left, at.top, width - at.right, height - at.bottom);
          expect(
            room,
            `${part.getAttribute('class')} at ${width} by ${height}, ${box.height}`,
          ).toBeGreaterThanOrEqual(-1);
        }
      }
      cleanup();
    }
  });

  it.each([
    [1280, 800],
    [820, 1180],
    [390, 844],
    [320, 568],
    [844, 390],
  ])('has all its buttons in view at %i by %i', async (width, height) => {
    await page.viewport(width, height);
    render(show());
    for (const button of document.querySelectorAll('button')) {
      const box = button.getBoundingClientRect();
      expect(
        Math.min(box.left, box.top, width - box.right, height - box.bottom),
        button.outerHTML,
      ).toBeGreaterThanOrEqual(0);
      expect(Math.min(box.width, box.height), button.outerHTML).toBeGreaterThanOrEqual(48);
    }
  });
});

describe('what the screens ask', () => {
  it('goes where the picture chosen leads', async () => {
    const [onCards, onStraight] = [vi.fn(), vi.fn()];
    render(
      <ChoiceScreen
        sheet="sheet"
        dye="moss"
        edge={2}
        onCards={onCards}
        onStraight={onStraight}
        onGrownUps={no}
      />,
    );
    await new Promise((done) => setTimeout(done, 450));
    fireEvent.click(screen.getByRole('button', { name: 'Straight to the sheet' }));
    expect([onCards.mock.calls.length, onStraight.mock.calls.length]).toEqual([0, 1]);
    fireEvent.click(screen.getByRole('button', { name: 'Cards first' }));
    expect(onCards).toHaveBeenCalledOnce();
  });

  it('shows what is the child’s by its facts, and counts nothing', () => {
    render(<Yours facts={['mul-7-2', 'add-3-4']} dye="woad" edge={2} onGoOn={no} onGrownUps={no} />);
    expect(screen.getByRole('img', { name: '7 × 2, 3 + 4' })).toBeTruthy();
    expect(document.querySelectorAll('.thread')).toHaveLength(2);
    expect(document.body.textContent).not.toMatch(/\b2 (facts|of)/);
  });

  it('gives the child whose cloth was pressed', () => {
    const onChoose = vi.fn();
    render(<Whose children={cloths} onChoose={onChoose} onGrownUps={no} />);
    fireEvent.click(screen.getByRole('button', { name: 'Teo' }));
    expect(onChoose).toHaveBeenCalledExactlyOnceWith('Teo');
  });

  it('hangs as many loose ends as steps are left', () => {
    render(<Next step="sheet" stepsLeft={4} edge={2} onBegin={no} onGrownUps={no} />);
    expect(document.querySelectorAll('.yarn')).toHaveLength(4);
  });

  it('pricks out as many places as a short sheet has, the first of them worked', () => {
    render(<Next step="sheet" stepsLeft={1} rows={2} op="add" edge={2} onBegin={no} onGrownUps={no} />);
    expect(document.querySelectorAll('.mark')).toHaveLength(9);
    expect(document.querySelectorAll('.drawing .ply')).toHaveLength(2);
  });

  it('hurries the finishing moment with a tap', () => {
    render(<PieceScreen piece={piece} edge={2} next="goOn" onNext={no} onGrownUps={no} />);
    expect(document.getAnimations().length).toBeGreaterThan(0);
    fireEvent.pointerDown(screen.getByRole('img', { name: 'Your piece' }));
    expect(document.querySelector('.appearing')).toBeNull();
  });

  it('draws of ten years of cloth only what is near, the newest end first', () => {
    const pieces = Array.from({ length: 1_800 }, (_, seed) => ({ ...piece, seed }));
    render(<LongCloth pieces={pieces} edge={2} onBack={no} onGrownUps={no} />);
    const drawn = document.querySelectorAll('.length').length;
    expect(drawn).toBeGreaterThan(0);
    expect(drawn).toBeLessThan(100);
    const strip = document.querySelector('.strip') ?? document.body;
    expect(strip.scrollTop + strip.clientHeight).toBeGreaterThan(strip.scrollHeight - 2);
    const edges = [...document.querySelectorAll('.strip-edge')].map((one) => one.getBoundingClientRect());
    expect(edges).toHaveLength(2);
    for (const { height } of edges) expect(height).toBeLessThan(4 * strip.clientHeight);
  });
});
