import { afterEach, beforeEach, expect, test } from 'vitest';
import { holdFocus } from '../../src/parent/hold-focus';
import { until } from './until';

let root: HTMLElement;
let stop: () => void;

beforeEach(() => {
  root = document.createElement('div');
  root.innerHTML = `
    <main data-holds="h1"><h1 tabindex="-1">Page</h1>
      <section data-holds=".undo"><p><button id="rule">Rule</button></p><button id="other">Other</button></section>
      <button id="loose">Loose</button>
    </main>`;
  document.body.append(root);
  stop = holdFocus(root);
});

afterEach(() => {
  stop();
  root.remove();
});

const at = (id: string) => root.querySelector<HTMLElement>(`#${id}`) as HTMLElement;

test('what the nearest holder selects takes the focus of a button that is gone', async () => {
  at('rule').focus();
  const undo = document.createElement('button');
  undo.className = 'undo';
  at('other').after(undo);
  at('rule').remove();
  await until(() => expect(document.activeElement).toBe(undo));
});

test('where the holder has nothing of the kind, its first control takes it', async () => {
  at('rule').focus();
  at('rule').remove();
  await until(() => expect(document.activeElement).toBe(at('other')));
});

test('where the holder went too, the one around it takes it', async () => {
  at('rule').focus();
  root.querySelector('section')?.remove();
  await until(() => expect(document.activeElement?.tagName).toBe('H1'));
});

test('a focus given up by a tap beside everything is not brought back', async () => {
  at('loose').focus();
  at('loose').blur();
  at('rule').remove();
  await new Promise((done) => setTimeout(done, 50));
  expect(document.activeElement).toBe(document.body);
});

test('whoever has taken the focus meanwhile keeps it', async () => {
  at('rule').focus();
  at('loose').focus();
  at('rule').remove();
  await new Promise((done) => setTimeout(done, 50));
  expect(document.activeElement).toBe(at('loose'));
});
