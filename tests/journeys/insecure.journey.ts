import { expect, test } from 'vitest';
import { launch, serveBuilt } from './browser';

test('opened over plain http by another name, the app shows its one plain page and keeps nothing', async () => {
  const served = await serveBuilt();
  const context = await launch({ flags: ['--host-resolver-rules=MAP boat.example 127.0.0.1'] });
  try {
    const page = await context.newPage();
    await page.goto(`http://boat.example:${served.port}/`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    expect(await page.textContent('h1')).toBe('Sumstitch needs a secure address');
    expect(await page.textContent('main')).toContain(`http://localhost:${served.port} instead`);
    expect(await page.evaluate(async () => (await indexedDB.databases()).length + localStorage.length)).toBe(
      0,
    );
  } finally {
    await context.close();
    await served.close();
  }
});
