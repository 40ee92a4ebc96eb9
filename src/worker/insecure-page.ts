/**
 * The one plain page shown at an insecure address, where a browser offers no worker, hashing or wake lock. It keeps
 * nothing, so nothing can be lost there.
 */
export function showInsecurePage(root: HTMLElement, address: string = location.href): void {
  const { hostname, port } = new URL(address);
  const main = document.createElement('main');
  main.className = 'plain-page';
  main.append(
    element('h1', 'Sumstitch needs a secure address'),
    element(
      'p',
      `This page came over plain http from ${hostname}. Opened like that, a browser keeps nothing for offline use, ` +
        'cannot guard the PIN and measures time too coarsely. Nothing has been stored here.',
    ),
    element('h2', 'What to do'),
    list([
      'On the machine that serves it, open ' +
        `http://localhost${port === '' ? '' : `:${port}`} instead: a browser trusts its own machine.`,
      'For a tablet or another computer, put the built files on any https host (the README says how, in five ' +
        'lines) and open the address that begins with https.',
      'Then install it to the home screen first, and set it up from there.',
    ]),
  );
  root.replaceChildren(main);
}

function list(items: readonly string[]): HTMLElement {
  const ol = document.createElement('ol');
  ol.append(...items.map((text) => element('li', text)));
  return ol;
}

function element(tag: 'h1' | 'h2' | 'p' | 'li', text: string): HTMLElement {
  const node = document.createElement(tag);
  node.textContent = text;
  return node;
}
