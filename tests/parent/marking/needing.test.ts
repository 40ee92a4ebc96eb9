import { expect, test } from 'vitest';
import { effectiveHistory } from '../../../src/core/household/history';
import { bookOf, byDay } from '../../../src/parent/marking/book-of';
import { needingOf } from '../../../src/parent/marking/needing';
import { needsOfParent } from '../../../src/parent/today/parent-needs';
import { todayWords } from '../../../src/parent/today/words';
import { fakeDesk } from '../fake-desk';
import { promptsOf, teosSheet, twoChildren, wrensSheet } from '../made-household';
import { allRight, madeSat } from '../made-sat';

const away = [{ why: 'hidden', fromMs: 20_000, toMs: 25_000, afterVisits: 5 }] as const;

function needing(...sheets: Parameters<typeof fakeDesk>[1] & object) {
  const desk = fakeDesk('2026-11-25', [...twoChildren, ...sheets]);
  const history = desk.history.value ?? effectiveHistory([], desk.household.value);
  const book = bookOf(desk.household.value, history);
  const waiting = needingOf(book, desk.household.value, desk.days.value, desk.today.value);
  return [...waiting].map(([{ sat }, why]) => [sat.day, why] as const);
}

test('a sheet interrupted within the week needs the parent, an older one no more', () => {
  const days = (...on: readonly string[]) => needing(...on.map((day) => teosSheet({ away, day })));
  expect(days('2026-11-19', '2026-11-18').map(([day]) => day)).toEqual(['2026-11-19']);
});

test('rows that wait need the parent on their own day only', () => {
  const onWord = { kind: 'childSettingsChanged', child: 'teo', changes: { rowsSent: 'parent' } } as const;
  const rows = needing(onWord, teosSheet(), teosSheet({ day: '2026-11-24' })).filter(([, why]) =>
    why.includes('for your word'),
  );
  expect(rows.map(([day]) => day)).toEqual(['2026-11-25']);
});

test('a sheet needs the parent for just what Today says of it, doubtful slips too', () => {
  // 4 × 7 = 28 answered 82: the right digits, turned round.
  const prompts = promptsOf('times-7', 25);
  const turned = allRight(prompts, 2500).map((one, place) =>
    prompts[place] === 'mul-4-7' ? { gave: '82', ms: 2500 } : one,
  );
  const many = prompts.filter((prompt) => prompt === 'mul-4-7').length;
  const sheet = madeSat(prompts, turned, { child: 'teo', set: 'times-7' });
  const desk = fakeDesk('2026-11-25', [...twoChildren, sheet]);
  const teo = desk.household.value.children.find(({ id }) => id === 'teo');
  const day = desk.days.value.get('teo');
  if (!teo || !day) throw new Error('no Teo');
  const onSheet = needsOfParent(teo, day).filter((need) => 'sitting' in need);
  expect(onSheet.map(({ what }) => what)).toEqual(['doubtfulSlip']);
  expect(needing(sheet)).toEqual([['2026-11-25', todayWords.doubtfulSlip(many)]]);
});

test('entries stand under their days in the order given', () => {
  const desk = fakeDesk('2026-11-25', [
    ...twoChildren,
    wrensSheet({ day: '2026-11-24' }),
    teosSheet({ day: '2026-11-24' }),
    teosSheet(),
  ]);
  const history = desk.history.value ?? effectiveHistory([], desk.household.value);
  const days = byDay(bookOf(desk.household.value, history));
  expect(days.map(([day, entries]) => [day, entries.map(({ child }) => child)])).toEqual([
    ['2026-11-25', ['teo']],
    ['2026-11-24', ['teo', 'wren']],
  ]);
});
