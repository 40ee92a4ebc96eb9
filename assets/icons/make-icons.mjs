// Renders the icons that need to be pixels. `icon.svg` is the icon; `bleed.svg` fills its square to the rim, for
// systems that cut icons to a shape of their own. The favicon is `icon.svg` as it is.
import { copyFileSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { CHROMIUM_FLAGS, findChromium } from '../../setup/chromium.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const out = (name) => here(`../../public/icons/${name}`);

const browser = await chromium.launch({
  executablePath: findChromium(),
  chromiumSandbox: false,
  args: CHROMIUM_FLAGS,
});
const page = await browser.newPage();
for (const [name, source, side] of [
  ['icon-192.png', 'icon.svg', 192],
  ['icon-512.png', 'icon.svg', 512],
  ['maskable-512.png', 'bleed.svg', 512],
  ['apple-touch-icon.png', 'bleed.svg', 180],
]) {
  await page.setViewportSize({ width: side, height: side });
  const address = `data:image/svg+xml;base64,${readFileSync(here(source)).toString('base64')}`;
  await page.setContent(
    `<style>body{margin:0}img{display:block;width:${side}px}</style><img src="${address}">`,
  );
  await page.screenshot({ path: out(name), omitBackground: true });
}
await browser.close();
copyFileSync(here('icon.svg'), out('favicon.svg'));
