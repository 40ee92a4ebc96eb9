import { expect, test } from 'vitest';
import { setById } from '../../../src/core/set/teaching-sets';
import { findings } from '../axe';
import { boatDesk } from '../boat-desk';
import { fakeDesk } from '../fake-desk';
import { promptsOf, twoChildren } from '../made-household';
import { allRight, madeSat } from '../made-sat';
import { openPages } from '../open-pages';
import { until } from '../until';

test('a set nobody has tried begins with a first try, and nothing is to be taught before it', async () => {
  const view = await openPages(fakeDesk('2026-11-27', twoChildren), 'monday');
  const teo = await view.findByRole('region', { name: 'Teo' });
  const many = setById('times-7')?.facts.length ?? 0;
  await until(() => expect(teo.textContent).toContain(`first try of ${many} facts`));
  expect(teo.querySelector('table')).toBeNull();
});

test('what a first try missed is named with a way to it, and as missed', async () => {
  const prompts = promptsOf('times-7', setById('times-7')?.facts.length ?? 0);
  const missed = ['mul-7-8', 'mul-6-7'];
  const did = allRight(prompts, 2000).map((one, place) =>
    missed.includes(`${prompts[place]}`) ? { gave: '11', ms: 2000 } : one,
  );
  const made = { child: 'teo', set: 'times-7', day: '2026-11-26' } as const;
  const desk = fakeDesk('2026-11-27', [
    ...twoChildren,
    madeSat(prompts, did, { ...made, purpose: 'firstTry' }),
    { kind: 'lineWritten', fact: 'mul-6-7', line: 'Six sevens are forty-two.' },
  ]);
  const view = await openPages(desk, 'monday');
  const teo = await view.findByRole('region', { name: 'Teo' });
  await until(() => expect(teo.querySelectorAll('tbody tr')).toHaveLength(2));
  const rows = [...teo.querySelectorAll('tbody tr')].map(({ textContent }) => textContent);
  expect(rows.find((row) => row?.startsWith('6 × 7 = 42'))).toContain(
    'Six sevens are forty-two. (your own line)',
  );
  expect(rows.find((row) => row?.startsWith('7 × 8 = 56'))).toMatch(/[a-z]+ .*\d/i);
});

test('the boat’s page holds every child and is fit to be printed', async () => {
  const view = await openPages(boatDesk(), 'monday');
  for (const name of ['Wren', 'Teo', 'Juniper']) {
    const child = await view.findByRole('region', { name });
    await until(() => expect(child.textContent).toContain('Likeliest to have faded'));
  }
  expect(await findings(view.container)).toEqual([]);
});

test('before a look-back nothing is taught, and the new facts are named for the day after', async () => {
  const prompts = promptsOf('times-7', setById('times-7')?.facts.length ?? 0);
  const teos = { child: 'teo', set: 'times-7' } as const;
  const did = allRight(prompts, 2000).map((one, place) =>
    prompts[place] === 'mul-7-8' ? { gave: '11', ms: 2000 } : one,
  );
  const sheets = ['2026-11-23', '2026-11-24', '2026-11-25', '2026-11-26'].map((day) =>
    madeSat(promptsOf('times-7', 25), allRight(promptsOf('times-7', 5), 2000), { ...teos, day }),
  );
  const desk = fakeDesk('2026-11-27', [
    ...twoChildren,
    { kind: 'setKept', child: 'teo', set: 'times-2', kept: true },
    madeSat(prompts, did, { ...teos, day: '2026-11-20', purpose: 'firstTry' }),
    ...sheets,
  ]);
  const view = await openPages(desk, 'monday');
  const teo = await view.findByRole('region', { name: 'Teo' });
  await until(() => expect(teo.textContent).toContain('The sheet is a look-back on the kept sets.'));
  expect(teo.querySelector('h3')?.textContent).toBe('New in the cards on the day after: one fact');
  expect(teo.querySelector('tbody tr')?.textContent).toContain('7 × 8 = 56');
});
