import { afterEach, beforeEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import { keyHand, nextCard, sit, touchHand } from './child-hand';
import { closeDevices, type Device, expectQuiet, openDevice } from './device';
import { press, seeHeading, setUp } from './parent-hand';
import { storedSats } from './stored';

let device: Device;
beforeEach(async () => {
  device = await openDevice({ hasTouch: true, viewport: { width: 820, height: 1180 } });
  await setUp(device.page, 'Wren');
  await press(device.page, 'OK');
  await press(device.page, 'Begin');
});
afterEach(async () => {
  expectQuiet(device);
  await closeDevices();
});

test('a pinch, a long press, a drag, a double tap, a wheel and a context menu leave the card as it is', async () => {
  const { page, cdp } = device;
  const card = await nextCard(page, null);
  const before = await page.evaluate(viewOf);
  await cdp.send('Input.synthesizePinchGesture', { x: 400, y: 300, scaleFactor: 3 });
  await cdp.send('Input.synthesizeScrollGesture', {
    x: 400,
    y: 500,
    yDistance: 400,
    gestureSourceType: 'touch',
  });
  await page.mouse.move(400, 300);
  await page.mouse.down();
  await page.mouse.move(500, 600, { steps: 5 });
  await page.mouse.up();
  await page.mouse.dblclick(410, 250);
  await page.mouse.wheel(0, 600);
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, -600);
  await page.keyboard.up('Control');
  const isMenuRefused = await page.evaluate(() => {
    const menu = new MouseEvent('contextmenu', { bubbles: true, cancelable: true });
    document.querySelector('.fact')?.dispatchEvent(menu);
    return menu.defaultPrevented;
  });
  expect(isMenuRefused).toBe(true);
  expect(await page.evaluate(viewOf)).toEqual(before);
  expect((await nextCard(page, null))?.id).toBe(card?.id);
  expect(await page.locator('output.answer').textContent()).toBe('');
});

test('a resting palm does not keep the other hand from answering', async () => {
  const { page, cdp } = device;
  const card = await nextCard(page, null);
  if (!card) throw new Error('There is no card.');
  const palm = { x: 60, y: 400, id: 1 };
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [palm] });
  await page.waitForTimeout(300);
  for (const key of [...card.answer, 'done']) {
    const box = await page.locator(`.key-${key}`).boundingBox();
    if (!box) throw new Error(`There is no key ${key}.`);
    const finger = { x: box.x + box.width / 2, y: box.y + box.height / 2, id: 2 };
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [palm, finger] });
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [finger] });
  }
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  expect((await nextCard(page, card.id))?.id).not.toBe(card.id);
  await sit(page, await touchHand(device));
  await seeHeading(page, words.firstTry);
  await expect.poll(async () => (await storedSats(page)).length).toBe(1);
  const [practice] = await storedSats(page);
  expect(practice?.visits[0]).toMatchObject({ given: card.answer, end: 'taken' });
  expect(practice?.visits[0]?.keys.map(([, , via]) => via)).toContain('touch');
});

test('a key held down is one key', async () => {
  const { page, cdp } = device;
  await nextCard(page, null);
  await page.waitForTimeout(300);
  for (const autoRepeat of [false, true, true])
    await cdp.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', key: '7', code: 'Digit7', autoRepeat });
  expect(await page.locator('output.answer').textContent()).toBe('7');
});

test('out of the child’s screens there is no way but the PIN', async () => {
  const { page } = device;
  await sit(page, await keyHand(device));
  await seeHeading(page, words.firstTry);
  expect(await page.locator('a[href]').count()).toBe(0);
  await press(page, 'Grown-ups');
  await seeHeading(page, 'For grown-ups');
  expect(await page.getByRole('navigation').count()).toBe(0);
  await press(page, 'Back to the cloth');
  await seeHeading(page, words.firstTry);
});

test('a page out of sight is an interruption, and the same card comes back', async () => {
  const { page, context } = device;
  await sit(page, await keyHand(device), { until: 2 });
  const card = await nextCard(page, null);
  const other = await context.newPage();
  await other.bringToFront();
  await page.evaluate(hide);
  await other.close();
  await page.bringToFront();
  await seeHeading(page, words.away);
  await press(page, 'Carry on');
  expect((await nextCard(page, null))?.text).toBe(card?.text);
});

/** A headless browser shows all of its pages at once, so this one says that it is hidden. */
function hide(): void {
  const isHidden = Object.getOwnPropertyDescriptor(Document.prototype, 'visibilityState');
  Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
  document.dispatchEvent(new Event('visibilitychange'));
  if (isHidden) Object.defineProperty(document, 'visibilityState', isHidden);
  document.dispatchEvent(new Event('visibilitychange'));
}

function viewOf() {
  const { scale, offsetLeft, offsetTop } = visualViewport ?? { scale: 1, offsetLeft: 0, offsetTop: 0 };
  return { scale, offsetLeft, offsetTop, scrollX, scrollY, chosen: `${getSelection()}` };
}
