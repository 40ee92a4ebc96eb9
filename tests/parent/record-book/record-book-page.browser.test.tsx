import '../../../src/ui/tokens.css';
import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { ParentSide } from '../../../src/parent/parent-side';
import { place } from '../../../src/parent/place';
import { setupStep } from '../../../src/parent/setup/progress';
import { writeRecordFile } from '../../../src/record-file/record-file';
import { satOf, story } from '../../core/household/made-records';
import { childDrafts, type Home, openHome } from '../../state/a-home';
import { findings } from '../axe';
import { testGate } from '../open-pages';
import { until } from '../until';

afterEach(() => {
  vi.restoreAllMocks();
  Reflect.deleteProperty(navigator, 'canShare');
  Reflect.deleteProperty(navigator, 'share');
});

async function openBook(home: Home) {
  cleanup();
  setupStep.value = null;
  await home.app.openDesk();
  place.value = { page: 'recordBook', sitting: null, child: null, fact: null };
  const gate = await testGate();
  const view = render(<ParentSide desk={home.app.desk} gate={gate} onBack={() => undefined} />);
  await view.findByRole('button', { name: 'Make a backup' }, { timeout: 20_000 });
  return view;
}

const withAnn = () => openHome({ records: childDrafts('ann', 'Ann') });

/** A file of another device that knows one more child, a sitting of Ann's and a later wish. */
function otherFile(): File {
  const records = [
    ...story({ kind: 'childAdded', child: 'bo', name: 'Bo', edge: 2 }),
    satOf('bo', '2026-03-02', 9, [['mul-2-3', '6']]),
  ];
  return new File([writeRecordFile('phone', 1_772_000_000_000, records)], 'other.json');
}

/** What the page hands to the browser's downloads. */
function downloads(): string[] {
  const names: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    names.push(this.download);
  });
  return names;
}

test('a backup is one tap: a download, and the page says so and when the last one was', async () => {
  const names = downloads();
  const { findByText, getByText } = await openBook(await withAnn());
  getByText(/There is no backup of this household/);
  await userEvent.click(screen.getByRole('button', { name: 'Make a backup' }));
  await findByText(/^“sumstitch-backup-2026-03-02\.json” is among the downloads\. It holds 3 records\.$/);
  expect(names).toEqual(['sumstitch-backup-2026-03-02.json']);
}, 40_000);

test('where the device has a sheet for sharing the file goes there; closed again, nothing counts as saved', async () => {
  const names = downloads();
  const shared: ShareData[] = [];
  let isClosed = true;
  Object.assign(navigator, {
    canShare: () => true,
    share: async (data: ShareData) => {
      if (isClosed) throw new DOMException('closed', 'AbortError');
      shared.push(data);
    },
  });
  const { findByText, getByText, getByRole } = await openBook(await withAnn());
  await userEvent.click(getByRole('button', { name: 'Make a backup' }));
  await findByText('No file was saved: the sheet for sharing was closed.');
  getByText(/There is no backup of this household/);
  isClosed = false;
  await userEvent.click(getByRole('button', { name: 'Make a backup' }));
  await findByText(/^The file was handed over/);
  expect(shared[0]?.files?.[0]?.name).toBe('sumstitch-backup-2026-03-02.json');
  expect(names).toEqual([]);
});

test('a file shows what it holds before anything is brought in, and says what came of it', async () => {
  const home = await withAnn();
  const { findByText, getByLabelText, getByText, getByRole } = await openBook(home);
  await userEvent.upload(getByLabelText('Choose a file'), otherFile());
  await findByText(/^A backup made on another device, /);
  getByText('Bo is not on this device yet: one sitting, Mon 2 Mar 2026.');
  getByText('One decision (rulings, settings, sets); 1 new.');
  expect(home.app.desk.household.value.children).toHaveLength(1);
  await userEvent.click(getByRole('button', { name: 'Bring in 2 records' }));
  await findByText('2 records brought in.');
  expect(home.app.desk.household.value.children.map(({ name }) => name).sort()).toEqual(['Ann', 'Bo']);
  await userEvent.upload(getByLabelText('Choose a file'), otherFile());
  await findByText('Everything in it is here already.');
  expect(screen.queryByRole('button', { name: /^Bring in/ })).toBeNull();
});

test('a file that is no backup is refused in words', async () => {
  const { findByText, getByLabelText } = await openBook(await withAnn());
  await userEvent.upload(getByLabelText('Choose a file'), new File(['Dear diary'], 'diary.json'));
  await findByText('This is not a file of Sumstitch records. Nothing was changed.');
});

test('a child deleted for good is named, and comes back as a new one when the parent says so', async () => {
  const home = await openHome({ records: [...childDrafts('ann', 'Ann'), ...childDrafts('bo', 'Bo')] });
  await home.app.desk.deleteChild('bo');
  const { findByText, findByLabelText, getByLabelText, getByRole } = await openBook(home);
  await userEvent.upload(getByLabelText('Choose a file'), otherFile());
  await findByText(/^Bo was deleted for good, but is in this file: one sitting, Mon 2 Mar 2026\./);
  await userEvent.click(await findByLabelText('Bring Bo in as a new child, with all of it'));
  await userEvent.click(getByRole('button', { name: 'Bring in' }));
  await findByText('2 records brought in.');
  const names = home.app.desk.household.value.children.map(({ name }) => name);
  expect(names.sort()).toEqual(['Ann', 'Bo']);
  expect(home.app.desk.household.value.children.some(({ id }) => id === 'bo')).toBe(false);
});

test('what was decided is taken back, put back and taken back again, each time as a record', async () => {
  const home = await withAnn();
  const { findByText, findByRole } = await openBook(home);
  await userEvent.click(await findByText('Show what was decided'));
  const isTimed = () => home.app.desk.household.value.children[0]?.settings.length;
  const settings = /5 facts on a sheet; without card rounds/;
  expect(isTimed()).toBe(5);
  for (const length of [25, 5, 25]) {
    const word = length === 25 ? 'Take back' : 'Put back';
    const row = (await screen.findAllByText(settings)).at(-1)?.closest('li');
    if (!row) throw new Error('no row');
    await userEvent.click(within(row as HTMLElement).getByRole('button', { name: new RegExp(`^${word}: `) }));
    await until(() => expect(isTimed()).toBe(length));
    await findByText(length === 25 ? 'Taken back.' : 'Put back.');
    await findByRole('button', {
      name: new RegExp(`^${length === 25 ? 'Put back' : 'Take back'}: Ann: 5 facts`),
    });
  }
  await until(() => expect(screen.getAllByText(/^(Taken back|Put back): Ann: 5 facts/)).toHaveLength(3));
});

test('a school year begins with one tap and can be taken back', async () => {
  const home = await withAnn();
  const { findByText, getByRole } = await openBook(home);
  await userEvent.click(getByRole('button', { name: 'Begin a school year today' }));
  await findByText('2025–26 has begun today.');
  expect(home.app.desk.household.value.years.map(({ name }) => name)).toEqual(['2025–26']);
  await userEvent.click(getByRole('button', { name: 'Undo' }));
  await until(() => expect(home.app.desk.household.value.years).toEqual([]));
});

test('axe finds nothing, with a file looked into and the decisions open', async () => {
  const { findByText, getByLabelText, container } = await openBook(await withAnn());
  await userEvent.upload(getByLabelText('Choose a file'), otherFile());
  await userEvent.click(await findByText('Show what was decided'));
  await findByText(/^A backup made on another device, /);
  await findByText(/Ann was added/);
  expect(await findings(container)).toEqual([]);
});
