import axe from 'axe-core';
import { beforeEach, expect, test } from 'vitest';
import { showInsecurePage } from '../../src/worker/insecure-page';

let root: HTMLElement;
beforeEach(() => {
  root = document.createElement('div');
  document.body.replaceChildren(root);
});

test('the page under test is secure, as 127.0.0.1 is, and isolated, as the app is', () => {
  expect(isSecureContext).toBe(true);
  expect(crossOriginIsolated).toBe(true);
});

test('the plain page says where it came from and what to do', () => {
  showInsecurePage(root, 'http://192.168.1.20:4173/');
  expect(root.textContent).toContain('plain http from 192.168.1.20');
  expect(root.textContent).toContain('http://localhost:4173 ');
  expect(root.querySelectorAll('li')).toHaveLength(3);
});

test('an address without a port is answered by one without', () => {
  showInsecurePage(root, 'http://school.example/');
  expect(root.textContent).toContain('http://localhost instead');
});

test('it takes the place of whatever was there', () => {
  root.textContent = 'before';
  showInsecurePage(root, 'http://192.168.1.20/');
  expect(root.textContent).not.toContain('before');
});

test('axe finds nothing on it', async () => {
  showInsecurePage(root, 'http://192.168.1.20/');
  const { violations } = await axe.run(root);
  expect(violations.map(({ id }) => id)).toEqual([]);
});
