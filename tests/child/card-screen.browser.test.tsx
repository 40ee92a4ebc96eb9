import { type Signal, signal } from '@preact/signals';
import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { page } from 'vitest/browser';
import type { CardFace } from '../../src/child/card';
import { CardScreen, type CardScreenProps } from '../../src/child/card-screen';
import type { KeyIntent } from '../../src/child/keys';
import '../../src/ui/tokens.css';

afterEach(cleanup);

const seven: CardFace = { showing: 1, prompt: 'mul-7-8', whole: false, wrote: null };

function show(first: Partial<CardFace> = {}, props: Partial<CardScreenProps> = {}) {
  const face: Signal<CardFace> = signal({ ...seven, ...first });
  const entry = signal('');
  const onKey = vi.fn<(intent: KeyIntent) => void>();
  const onShown = vi.fn<CardScreenProps['onShown']>();
  const onGrownUps = vi.fn();
  render(
    <CardScreen
      face={face}
      entry={entry}
      layout="across"
      order="phone"
      hand="right"
      clock={null}
      rang={signal(false)}
      onKey={onKey}
      onShown={onShown}
      onGrownUps={onGrownUps}
      {...props}
    />,
  );
  return { face, entry, onKey, onShown, onGrownUps };
}

const fact = () => document.querySelector('.fact');
const plain = (text: string | null | undefined) => text?.replaceAll('\u00a0', ' ');
const twoFrames = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));

describe('the card', () => {
  it('shows the fact with true signs', () => {
    const { face } = show();
    expect(plain(fact()?.textContent)).toBe('7 × 8 =');
    act(() => {
      face.value = { ...seven, showing: 2, prompt: 'sub-9-4' };
    });
    expect(plain(fact()?.textContent)).toBe('9 − 4 =');
  });

  it('shows it stacked, and a number to copy as it is', () => {
    const { face } = show({}, { layout: 'stacked' });
    expect(plain(fact()?.textContent)).toBe('7\n× 8');
    act(() => {
      face.value = { ...seven, showing: 2, prompt: 'copy-47' };
    });
    expect(fact()?.textContent).toBe('47');
  });

  it('is a new, opaque element at every showing, even of the same fact', () => {
    const { face } = show();
    const before = fact();
    act(() => {
      face.value = { ...seven, showing: 2 };
    });
    expect(fact()).not.toBe(before);
    expect(fact()?.getAttribute('elementtiming')).toBe('card');
    expect(getComputedStyle(fact() ?? document.body).opacity).toBe('1');
  });

  it('keeps its elements while digits come and go', () => {
    const { entry } = show();
    const [before, answer] = [fact(), screen.getByRole('status', { name: 'Your answer' })];
    act(() => {
      entry.value = '5';
    });
    expect(answer.textContent).toBe('5');
    expect(fact()).toBe(before);
  });

  it('gives nothing away by the width of the outline', () => {
    const { face } = show();
    const width = () => screen.getByRole('status', { name: 'Your answer' }).getBoundingClientRect().width;
    const two = width();
    act(() => {
      face.value = { ...seven, showing: 2, prompt: 'mul-2-3' };
    });
    expect(width()).toBe(two);
  });

  it('moves nothing while an answer grows to the four digits a card can take', () => {
    const { entry } = show();
    const places = () =>
      [...document.querySelectorAll('.fact, .answer')].map((one) =>
        JSON.stringify(one.getBoundingClientRect()),
      );
    const before = places();
    for (const digits of ['1', '10', '108', '1088']) {
      act(() => {
        entry.value = digits;
      });
      expect(places()).toEqual(before);
      const answer = screen.getByRole('status', { name: 'Your answer' });
      expect(answer.scrollWidth).toBeLessThanOrEqual(answer.clientWidth);
    }
  });

  it('shows the own answer as it stands, and the whole fact after a second miss', () => {
    const { face } = show({ wrote: '54' });
    expect(screen.getByText('You wrote').textContent).toBe('You wrote 54');
    act(() => {
      face.value = { ...seven, showing: 2, wrote: '54', whole: true };
    });
    expect(plain(fact()?.textContent)).toBe('7 × 8 = 56');
    expect(screen.queryByText('You wrote')).toBeNull();
    expect(screen.getByText('Now you write it')).toBeTruthy();
  });

  it('shows the way beside a new fact while it is whole, and takes it away when it is asked', () => {
    const wayTo = (prompt: string) =>
      prompt === 'mul-7-8' ? { line: 'Five 8s and two 8s.', picture: null } : null;
    const { face } = show({ whole: true }, { wayTo });
    expect(screen.getByText('Five 8s and two 8s.')).toBeTruthy();
    expect(screen.queryByText('Now you write it')).toBeNull();
    act(() => {
      face.value = { ...seven, showing: 2 };
    });
    expect(screen.queryByText('Five 8s and two 8s.')).toBeNull();
    act(() => {
      face.value = { ...seven, showing: 3, prompt: 'mul-2-3', whole: true };
    });
    expect(screen.queryByText('Five 8s and two 8s.')).toBeNull();
    expect(screen.getByText('Now you write it')).toBeTruthy();
  });

  it('paints a new fact no later for its picture', async () => {
    const columns = [{ count: 12, look: 'one' }] as const;
    const picture = { what: 'array', rows: columns, columns } as const;
    const { onShown } = show({ whole: true }, { wayTo: () => ({ line: 'Twelve 12s.', picture }) });
    await vi.waitFor(() => expect(onShown).toHaveBeenCalledTimes(2));
    const [[, frameMs], [, paintMs]] = onShown.mock.calls as [
      Parameters<CardScreenProps['onShown']>,
      Parameters<CardScreenProps['onShown']>,
    ];
    expect(paintMs - frameMs).toBeLessThan(100);
    expect(document.querySelectorAll('.strategy-picture path')).toHaveLength(1);
  });

  it('takes the digits in the gap of a line that is asked for, one gap at a time', () => {
    const { face, entry } = show({ prompt: 'line-up-5-15-a-0' });
    const cells = () => [...document.querySelectorAll('.cells li')].map((cell) => cell.textContent);
    act(() => {
      entry.value = '2';
    });
    expect(cells()).toEqual(['15', '20', '2', '30', '', '40']);
    expect(screen.getByText('What fills the gap?')).toBeTruthy();
    act(() => {
      entry.value = '';
      face.value = { ...seven, showing: 2, prompt: 'line-up-5-15-a-1' };
    });
    expect(cells()).toEqual(['15', '20', '25', '30', '', '40']);
    act(() => {
      face.value = { ...seven, showing: 3, prompt: 'line-up-5-15-a-2' };
    });
    expect(cells()).toEqual(['15', '20', '25', '30', '35', '40']);
    expect(screen.getByText('Up by how many?')).toBeTruthy();
    expect(screen.getAllByRole('status', { name: 'Your answer' })).toHaveLength(1);
  });

  it('sets a story for reading, with the unit beside the answer', () => {
    show({ prompt: 'story-jars-mul-3-4' });
    expect(screen.getByText('You fill 3 jars. You put 4 buttons in each.')).toBeTruthy();
    expect(screen.getByText('How many buttons is that?')).toBeTruthy();
    expect(document.querySelector('.with-unit')?.textContent).toBe('buttons');
  });

  it('gives a hundred onsets for a hundred cards', async () => {
    const { face, onShown } = show();
    for (let showing = 2; showing <= 100; showing += 1) {
      await twoFrames();
      act(() => {
        face.value = { ...seven, showing };
      });
    }
    await twoFrames();
    const firsts = onShown.mock.calls.filter(([, , by]) => by === 'frame').map(([showing]) => showing);
    expect(firsts).toEqual(Array.from({ length: 100 }, (_, index) => index + 1));
  });

  it('then tells the moment of painting, a little after the frame began and never for a card that has gone', async () => {
    const { face, onShown } = show();
    await vi.waitFor(() => expect(onShown).toHaveBeenCalledTimes(2));
    const [[, frameMs], [, paintMs, by]] = onShown.mock.calls as [
      Parameters<CardScreenProps['onShown']>,
      Parameters<CardScreenProps['onShown']>,
    ];
    expect(by).toBe(crossOriginIsolated ? 'element' : 'elementCoarse');
    expect(Math.abs(paintMs - frameMs)).toBeLessThan(100);
    act(() => {
      face.value = { ...seven, showing: 2 };
    });
    await vi.waitFor(() => expect(onShown.mock.lastCall).toEqual([2, expect.any(Number), by]));
    expect(onShown.mock.calls.filter(([showing]) => showing === 1)).toHaveLength(2);
  });
});

describe('the card screen', () => {
  it('takes keys from the keyboard until it is gone', () => {
    const { onKey } = show();
    fireEvent.keyDown(document.body, { key: '5', code: 'Digit5' });
    fireEvent.keyDown(document.body, { key: '6', code: 'Digit6' });
    fireEvent.keyDown(document.body, { key: '6', code: 'Digit6', repeat: true });
    fireEvent.keyDown(document.body, { key: 'Enter', code: 'Enter' });
    expect(onKey.mock.calls.map(([{ key }]) => key)).toEqual(['5', '6', 'done']);
    cleanup();
    fireEvent.keyDown(document.body, { key: '5', code: 'Digit5' });
    expect(onKey).toHaveBeenCalledTimes(3);
  });

  it('leaves by the knot only', () => {
    const { onGrownUps } = show();
    fireEvent.click(screen.getByRole('button', { name: 'Grown-ups' }));
    expect(onGrownUps).toHaveBeenCalledOnce();
  });

  const sizes = [
    [1280, 800, 100],
    [820, 1180, 100],
    [390, 844, 66],
    [320, 568, 48],
    [844, 390, 48],
  ] as const;

  it.each(sizes)('fits %i by %i, its keys at least %i px each way', async (width, height, least) => {
    await page.viewport(width, height);
    for (const layout of ['across', 'stacked'] as const) {
      for (const prompt of ['mul-7-8', 'div-144-12'] as const) {
        for (const whole of [false, true]) {
          show(
            { prompt, whole, wrote: '12' },
            { layout, clock: { allowanceMs: 45_000, elapsedMs: 0, running: true } },
          );
          const inView = [...document.querySelectorAll('.key, .fact, .answer, .note')];
          expect(inView.length).toBe(16);
          const keypad = document.querySelector('.keypad')?.getBoundingClientRect() ?? new DOMRect();
          for (const element of inView) {
            const box = element.getBoundingClientRect();
            const where = `${layout} ${prompt} ${whole} ${element.className}`;
            expect(box.left, where).toBeGreaterThanOrEqual(0);
            expect(box.top, where).toBeGreaterThanOrEqual(0);
            expect(box.right, where).toBeLessThanOrEqual(width);
            expect(box.bottom, where).toBeLessThanOrEqual(height);
            if (element.matches('.key')) {
              expect(Math.min(box.width, box.height), where).toBeGreaterThanOrEqual(least);
            } else {
              const isApart =
                box.right <= keypad.left ||
                box.left >= keypad.right ||
                box.bottom <= keypad.top ||
                box.top >= keypad.bottom;
              expect(isApart, `${where} lies on the keypad`).toBe(true);
            }
          }
          const face = [...document.querySelectorAll('.fact, .answer')].map((one) =>
            one.getBoundingClientRect(),
          );
          const tall =
            Math.max(...face.map(({ bottom }) => bottom)) - Math.min(...face.map(({ top }) => top));
          if (!whole) expect(tall).toBeLessThanOrEqual(height / 3 + 1);
          cleanup();
        }
      }
    }
  });
});
