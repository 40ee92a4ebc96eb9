import { signal } from '@preact/signals';
import { act, cleanup, render } from '@testing-library/preact';
import { options } from 'preact';
import { afterEach, expect, test } from 'vitest';
import type { CardFace } from '../../src/child/card';
import { CardScreen } from '../../src/child/card-screen';

afterEach(cleanup);

/** How many elements and components are made anew while something happens. */
function madeBy(happens: () => void): number {
  const before = options.vnode;
  let made = 0;
  options.vnode = (vnode) => {
    made += 1;
    before?.(vnode);
  };
  try {
    act(happens);
  } finally {
    if (before) options.vnode = before;
    else delete options.vnode;
  }
  return made;
}

test('a digit renders nothing, and a new card renders the card alone', () => {
  const face = signal<CardFace>({ showing: 1, prompt: 'mul-7-8', whole: false, wrote: null });
  const entry = signal('');
  const whole = madeBy(() => {
    render(
      <CardScreen
        face={face}
        entry={entry}
        layout="across"
        order="phone"
        hand="right"
        clock={null}
        rang={signal(false)}
        onKey={() => undefined}
        onShown={() => undefined}
        onGrownUps={() => undefined}
      />,
    );
  });
  const digit = madeBy(() => {
    entry.value = '5';
  });
  expect(digit).toBe(0);
  expect(document.querySelector('output')?.textContent).toBe('5');
  const card = madeBy(() => {
    face.value = { showing: 2, prompt: 'mul-6-7', whole: false, wrote: null };
  });
  // The card's frame, the fact and the answer, each with its text; no key, no hem.
  expect(card).toBeLessThanOrEqual(8);
  expect(card * 4).toBeLessThan(whole);
});
