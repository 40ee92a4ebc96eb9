import { describe, expect, test } from 'vitest';
import { planOf, Sitter, timed } from './sitter';

const two = ['add-6-2', 'mul-7-8'] as const;
const three = ['add-6-2', 'mul-7-8', 'sub-9-4'] as const;

describe('taking an answer', () => {
  test('an untimed card waits for the done key', () => {
    const sitter = new Sitter(planOf(two, { takesItself: true })).answer('8', 1000, 2000);
    expect(sitter.state).toMatchObject({ entry: '8', place: 0 });
    sitter.key('done', 2500);
    expect(sitter.visits[0]).toMatchObject({ given: '8', took: 'done', endMs: 2500 });
  });

  test('a timed card takes an answer once it has as many digits as the true one', () => {
    const sitter = new Sitter(timed(two)).answer('8', 1000, 2000).answer('5', 2017, 3000);
    expect(sitter.state).toMatchObject({ entry: '5', place: 1 });
    sitter.key('6', 3100);
    expect(sitter.given).toEqual(['8', '56']);
    expect(sitter.visits.map(({ took }) => took)).toEqual(['itself', 'itself']);
  });

  test('a timed card waits too where the setting turns taking off', () => {
    const sitter = new Sitter(timed(two, { takesItself: false })).answer('8', 1000, 2000);
    expect(sitter.visits).toHaveLength(0);
  });

  test('practice takes by digits without a clock: that is what it is for', () => {
    const sitter = new Sitter(planOf(['copy-47'], { purpose: 'practice', takesItself: true }));
    expect(sitter.answer('47', 1000, 2000).visits[0]).toMatchObject({ given: '47', took: 'itself' });
  });

  test('done on an empty card does nothing but is logged', () => {
    const sitter = new Sitter(planOf(two)).shown(1000).key('done', 2000).type('8', 2500, 'done');
    expect(sitter.visits[0]?.keys.map(([key]) => key)).toEqual(['done', '8', 'done']);
    expect(sitter.given).toEqual(['8']);
  });

  test('a full card ignores a fifth digit but logs it', () => {
    const sitter = new Sitter(planOf(two)).answer('12345', 1000, 2000);
    expect(sitter.state.entry).toBe('1234');
    expect(sitter.state.keys).toHaveLength(5);
  });

  test('digits are given as typed, a nought in front and all', () => {
    expect(new Sitter(planOf(two)).answer('08', 1000, 2000, 'done').given).toEqual(['08']);
  });

  test('every key is kept with its time and how it came', () => {
    const sitter = new Sitter(planOf(two)).shown(1000);
    sitter.send({ type: 'key', key: '8', atMs: 1900.125, via: 'touch' }).key('done', 2100);
    expect(sitter.visits[0]?.keys).toEqual([
      ['8', 1900.125, 'touch'],
      ['done', 2100, 'keys'],
    ]);
  });
});

describe('the guard of 250 ms', () => {
  const first = () => new Sitter(timed(two)).answer('8', 1000, 2000).shown(2016);

  test.each([
    [2017, 1],
    [2265.999, 1],
    [2266, 0],
    [2266.001, 0],
  ])('a key at %d ms on a card of 2016 ms: late keys %d', (atMs, late) => {
    const sitter = first().key('5', atMs);
    expect(sitter.visits[0]?.late ?? 0).toBe(late);
    expect(sitter.state.entry).toBe(late ? '' : '5');
  });

  test('a key before the card is visible belongs to the card before', () => {
    const sitter = new Sitter(timed(two)).answer('8', 1000, 2000).key('5', 2900);
    expect(sitter.visits[0]).toMatchObject({ late: 1 });
    expect(sitter.happened.at(-1)).toEqual({ what: 'visitAmended', index: 0 });
    expect(sitter.state).toMatchObject({ phase: 'showing', entry: '', keys: [] });
  });

  test('done, skip and back are guarded like digits', () => {
    const sitter = first().key('skip', 2100).key('done', 2110).key('back', 2120);
    expect(sitter.state).toMatchObject({ place: 1, phase: 'answering' });
    expect(sitter.visits[0]).toMatchObject({ late: 3 });
  });

  test('the first card has no guard, and a key before it is seen answers nothing', () => {
    const sitter = new Sitter(planOf(two)).key('7', 900).shown(1000).key('8', 1001);
    expect(sitter.state).toMatchObject({ entry: '8' });
    expect(sitter.state.keys).toHaveLength(1);
  });

  test('sums of microseconds meet the bound exactly', () => {
    const sitter = new Sitter(timed(two)).answer('8', 1000, 1500).shown(2000.008).key('5', 2250.008);
    expect(sitter.state.entry).toBe('5');
  });
});

describe('back', () => {
  test('deletes a digit', () => {
    const sitter = new Sitter(planOf(two)).answer('87', 1000, 2000).key('back', 2400);
    expect(sitter.state.entry).toBe('8');
  });

  test('on an empty first card does nothing', () => {
    const sitter = new Sitter(planOf(two)).shown(1000).key('back', 2000);
    expect(sitter.state).toMatchObject({ place: 0, visits: [], phase: 'answering' });
  });

  test('opens the card before with its digits, less the one that took it by itself', () => {
    const sitter = new Sitter(timed(three)).answer('8', 1000, 2000).answer('54', 2017, 3000);
    sitter.shown(3117).key('back', 4000);
    expect(sitter.state).toMatchObject({ place: 1, entry: '5', from: '5' });
    sitter.answer('6', 4017, 5000);
    expect(sitter.visits.map(({ place, end, given }) => [place, end, given])).toEqual([
      [0, 'taken', '8'],
      [1, 'taken', '54'],
      [2, 'back', null],
      [1, 'taken', '56'],
    ]);
    expect(sitter.visits[3]).toMatchObject({ from: '5', onsetMs: 4017 });
    expect(sitter.state.place).toBe(2);
  });

  test('opens the card before with all its digits where done took it', () => {
    const sitter = new Sitter(planOf(two)).answer('9', 1000, 2000, 'done').shown(2200).key('back', 3000);
    expect(sitter.state).toMatchObject({ place: 0, entry: '9', from: '9' });
  });

  test('opens a skipped card empty, and an answer to it takes it off the end', () => {
    const sitter = new Sitter(planOf(two)).shown(1000).key('skip', 2000).shown(2017).key('back', 3000);
    expect(sitter.state).toMatchObject({ place: 0, entry: '', again: [0] });
    sitter.answer('8', 3017, 4000, 'done').answer('56', 4200, 5000, 'done');
    expect(sitter.state).toMatchObject({ ended: 'finished', again: [] });
  });

  test('goes back card by card, and forward again over each', () => {
    const sitter = new Sitter(timed(three)).answer('8', 1000, 2000).answer('56', 2017, 3000);
    sitter.shown(3117).key('back', 4000).shown(4017).key('back', 5000).key('back', 5300);
    expect(sitter.state.place).toBe(0);
    sitter.answer('8', 5317, 6000).answer('56', 6017, 7000).answer('5', 7117, 8000);
    expect(sitter.state.ended).toBe('finished');
    expect(sitter.visits.map(({ place }) => place)).toEqual([0, 1, 2, 1, 0, 1, 2]);
  });

  test('past the bell opens nothing: only the card on screen may be finished', () => {
    const sitter = new Sitter(timed(two)).answer('8', 1000, 2000).shown(2017).key('back', 46_001);
    expect(sitter.state).toMatchObject({ place: 1, phase: 'answering', rang: true });
  });
});

describe('skip', () => {
  test('a skipped fact comes back at the end once, in the order of skipping', () => {
    const sitter = new Sitter(planOf(three));
    sitter.shown(1000).key('skip', 2000).shown(2017).key('skip', 3000);
    sitter.answer('5', 3017, 4000, 'done').shown(4200).key('skip', 5000);
    expect(sitter.state).toMatchObject({ place: 1, turn: 4 });
    sitter.answer('56', 5017, 6000, 'done');
    expect(sitter.visits.map(({ place, end }) => `${place} ${end}`)).toEqual([
      '0 skipped',
      '1 skipped',
      '2 taken',
      '0 skipped',
      '1 taken',
    ]);
    expect(sitter.state).toMatchObject({ ended: 'finished', endedMs: 6200 });
  });

  test('drops what was typed', () => {
    const sitter = new Sitter(planOf(two)).answer('1', 1000, 2000).key('skip', 2500);
    expect(sitter.visits[0]).toMatchObject({ end: 'skipped', given: null });
    expect(sitter.state.entry).toBe('');
  });
});

describe('the bell', () => {
  const upTo = () => new Sitter(timed(three)).answer('8', 1000, 2000).shown(2017);

  test('stands at the first onset plus the allowance, by the best onset there is', () => {
    const sitter = new Sitter(timed(two)).shown(1003, 'frame');
    expect(sitter.state.bellAtMs).toBe(46_003);
    expect(sitter.shown(1000.5, 'element').state).toMatchObject({ bellAtMs: 46_000.5, firstOnsetMs: 1000.5 });
  });

  test('a look at the clock rings it once, after it and not at it', () => {
    const sitter = upTo().time(46_000);
    expect(sitter.state.rang).toBe(false);
    sitter.time(46_000.1).time(47_000).key('5', 48_000);
    expect(sitter.whats().filter((what) => what === 'bell')).toHaveLength(1);
  });

  test('the card on screen may be finished, is kept as such, and ends the sitting', () => {
    const sitter = upTo().time(46_001).type('56', 47_000);
    expect(sitter.visits[1]).toMatchObject({ given: '56', afterBell: true });
    expect(sitter.state).toMatchObject({ ended: 'bell', endedMs: 47_100 });
    expect(sitter.whats().slice(-2)).toEqual(['visitClosed', 'ended']);
  });

  test('a key before the bell counts though the timer fired first', () => {
    const sitter = upTo().key('5', 45_990).time(46_004).key('6', 45_999.9);
    expect(sitter.visits[1]?.afterBell).toBeUndefined();
    expect(sitter.state.ended).toBe('bell');
  });

  test('the last card answered in time finishes the sheet, though the timer fired first', () => {
    const sitter = new Sitter(timed(['add-6-2'])).shown(1000).time(46_001).key('8', 45_999);
    expect(sitter.state.ended).toBe('finished');
  });

  test('a skip past the bell ends the sitting', () => {
    expect(upTo().key('skip', 46_001).state).toMatchObject({ ended: 'bell', endedMs: 46_001 });
  });

  test('a sheet done before the bell is finished', () => {
    expect(new Sitter(timed(['add-6-2'])).answer('8', 1000, 2000).state.ended).toBe('finished');
  });

  test('leaving after the bell settles nothing anew: the bell ended it', () => {
    const sitter = upTo().left(46_500);
    expect(sitter.state).toMatchObject({ ended: 'bell', away: [], clockGone: false });
    expect(sitter.visits[1]).toMatchObject({ end: 'left', given: null });
    expect(upTo().stopped(46_500).state.ended).toBe('bell');
  });

  test('a sleep found out only afterwards is an interruption, not the bell', () => {
    expect(upTo().left(300_000, 'clocks').state).toMatchObject({ phase: 'away', ended: null, rang: false });
  });

  test('an untimed sitting has none', () => {
    const sitter = new Sitter(planOf(two)).answer('8', 1000, 900_000, 'done').time(1e9);
    expect(sitter.state).toMatchObject({ bellAtMs: null, rang: false, ended: null });
  });
});

describe('an interruption', () => {
  const broken = () => new Sitter(timed(three)).answer('8', 1000, 2000).shown(2017).key('5', 3000).left(4000);

  test('the card is void and comes again, empty, with a new onset', () => {
    const sitter = broken();
    expect(sitter.visits[1]).toMatchObject({ end: 'left', endMs: 4000, given: null });
    sitter.returned(64_000);
    expect(sitter.state).toMatchObject({ phase: 'showing', place: 1, entry: '', onsetMs: null });
    sitter.answer('56', 64_017, 65_000);
    expect(sitter.visits[2]).toMatchObject({ place: 1, onsetMs: 64_017, given: '56' });
    expect(sitter.state.away).toEqual([{ why: 'hidden', fromMs: 4000, toMs: 64_000, afterVisits: 2 }]);
  });

  test('a timed sitting goes on without a clock, through every card', () => {
    const sitter = broken().returned(64_000).answer('56', 64_017, 65_000).answer('5', 65_200, 200_000);
    expect(sitter.state).toMatchObject({ clockGone: true, rang: false, ended: 'finished' });
    expect(sitter.whats()).not.toContain('bell');
  });

  test('for a later ruling the bell is put off by the time away and the void visit', () => {
    const sitter = broken().returned(64_000).shown(64_017);
    expect(sitter.state.bellAtMs).toBe(46_000 + 64_017 - 2017);
    sitter.type('56', 107_900).answer('5', 108_010, 108_500);
    expect(sitter.visits.map(({ afterBell }) => afterBell ?? false)).toEqual([false, false, false, true]);
  });

  test('before the next card was seen leaves no visit, and the bell is put off all the same', () => {
    const sitter = new Sitter(timed(three)).answer('8', 1000, 2000).left(2005).returned(9000).shown(9017);
    expect(sitter.visits).toHaveLength(1);
    expect(sitter.state.bellAtMs).toBe(46_000 + 9017 - 2000);
  });

  test('a card opened again and left before it was seen comes back empty', () => {
    const sitter = new Sitter(planOf(two)).answer('9', 1000, 2000, 'done').shown(2200).key('back', 3000);
    expect(sitter.state.entry).toBe('9');
    expect(sitter.left(3005).returned(9000).state).toMatchObject({ place: 0, entry: '', from: null });
  });

  test('keys while away are nobody’s', () => {
    const sitter = broken().key('6', 5000);
    expect(sitter.visits.flatMap(({ keys }) => keys)).toHaveLength(2);
  });

  test('a key too soon after coming back is logged to the void card', () => {
    const sitter = broken().returned(64_000).shown(64_017).key('5', 64_100);
    expect(sitter.visits[1]).toMatchObject({ end: 'left', late: 1 });
  });

  test('coming back with the whole fact shown shows it again', () => {
    const sitter = new Sitter(planOf(two, { onWrong: 'showAgain' })).answer('9', 1000, 2000, 'done');
    sitter.shown(2200).left(3000).returned(4000);
    expect(sitter.state).toMatchObject({ place: 0, shown: true });
  });

  test('stopped by a grown-up ends it at once, and what was answered stays', () => {
    const sitter = broken().stopped(9000);
    expect(sitter.state).toMatchObject({ ended: 'stopped', endedMs: 9000, away: [{ toMs: 9000 }] });
    expect(sitter.given).toEqual(['8', null]);
    const open = new Sitter(planOf(two)).answer('8', 1000, 2000, 'done').shown(2200).stopped(3000);
    expect(open.visits.map(({ end }) => end)).toEqual(['taken', 'left']);
    expect(open.state.ended).toBe('stopped');
  });
});

describe('the onset', () => {
  test('a better source refines it, a worse or an equal one does not', () => {
    const sitter = new Sitter(planOf(two)).shown(1000, 'elementCoarse').shown(1001, 'frame');
    expect(sitter.state).toMatchObject({ onsetMs: 1000, onsetBy: 'elementCoarse' });
    sitter.shown(999, 'element').shown(998, 'element');
    expect(sitter.state).toMatchObject({ onsetMs: 999, onsetBy: 'element' });
  });

  test('a paint reported after the answer still reaches the visit it belongs to', () => {
    const sitter = new Sitter(timed(two)).shown(1003, 'frame');
    const { showing } = sitter.state;
    sitter.key('8', 1010).shown(1000, 'element', showing);
    expect(sitter.visits[0]).toMatchObject({ onsetMs: 1000, onsetBy: 'element' });
    expect(sitter.state).toMatchObject({ bellAtMs: 46_000, phase: 'showing' });
    expect(sitter.happened.at(-1)).toEqual({ what: 'visitAmended', index: 0 });
  });

  test('a paint of the last card reaches it after the end, too', () => {
    const sitter = new Sitter(timed(['add-6-2']))
      .shown(1003, 'frame')
      .key('8', 1010)
      .shown(1000, 'element', 1);
    expect(sitter.visits[0]).toMatchObject({ onsetMs: 1000 });
  });

  test('a paint of a card long gone changes nothing', () => {
    const sitter = new Sitter(timed(three)).answer('8', 1000, 2000).answer('56', 2017, 3000);
    const before = sitter.state;
    expect(sitter.shown(900, 'element', 1).state).toBe(before);
  });
});

describe('showing a fact again', () => {
  const mending = () => new Sitter(planOf(two, { purpose: 'mending', onWrong: 'showAgain' }));

  test('a wrong answer brings the same place with the whole fact until it is right', () => {
    const sitter = mending().answer('9', 1000, 2000, 'done');
    expect(sitter.state).toMatchObject({ place: 0, shown: true, entry: '' });
    sitter.answer('7', 2200, 3000, 'done').answer('8', 3200, 4000, 'done');
    expect(sitter.visits.map(({ shown }) => shown ?? false)).toEqual([false, true, true]);
    expect(sitter.state).toMatchObject({ place: 1, shown: false });
  });

  test('a skip moves on; the fact comes back at the end once, unshown', () => {
    const sitter = mending().answer('9', 1000, 2000, 'done').shown(2200).key('skip', 3000);
    sitter.answer('56', 3017, 4000, 'done');
    expect(sitter.state).toMatchObject({ place: 0, shown: false, turn: 2 });
    expect(sitter.shown(4200).key('skip', 5000).state.ended).toBe('finished');
  });
});

describe('begin and end', () => {
  test('a sitting without prompts has ended', () => {
    expect(new Sitter(planOf([])).state).toMatchObject({ phase: 'ended', ended: 'finished' });
  });

  test('after the end nothing changes any more', () => {
    const sitter = new Sitter(planOf(['add-6-2'])).answer('8', 1000, 2000, 'done');
    const { state } = sitter;
    sitter.key('7', 3000).time(4000).left(5000).returned(6000).stopped(7000).shown(8000);
    expect(sitter.state).toBe(state);
  });

  test('what happened is told in order', () => {
    const sitter = new Sitter(timed(two)).answer('8', 1000, 2000).answer('56', 2017, 3000);
    expect(sitter.whats()).toEqual([
      'entered',
      'visitClosed',
      'cardOpened',
      'entered',
      'entered',
      'visitClosed',
      'ended',
    ]);
    expect(sitter.happened.filter(({ what }) => what === 'visitClosed')).toEqual([
      { what: 'visitClosed', index: 0 },
      { what: 'visitClosed', index: 1 },
    ]);
  });

  test('every showing has a serial of its own', () => {
    const sitter = new Sitter(timed(three)).answer('8', 1000, 2000);
    const serials = [1, sitter.state.showing];
    serials.push(sitter.shown(2017).left(3000).returned(4000).state.showing);
    serials.push(sitter.left(4001).returned(5000).state.showing);
    expect(new Set(serials).size).toBe(4);
  });
});

describe('a new fact of a card round', () => {
  const cards = () => new Sitter(planOf(two, { purpose: 'cards', onWrong: 'showAgain', shownFirst: [0] }));

  test('is shown whole when its card first comes, the known ones are asked', () => {
    const sitter = cards();
    expect(sitter.state).toMatchObject({ place: 0, shown: true });
    sitter.answer('8', 1000, 2000, 'done');
    expect(sitter.visits[0]).toMatchObject({ place: 0, shown: true, given: '8' });
    expect(sitter.state).toMatchObject({ place: 1, shown: false });
  });

  test('is shown whole again after a skip, after an interruption, and when its card is opened again', () => {
    const skipped = cards().shown(1000).key('skip', 2000).answer('56', 2100, 3000, 'done');
    expect(skipped.state).toMatchObject({ place: 0, shown: true });
    const away = cards().shown(1000).left(2000).returned(3000);
    expect(away.state).toMatchObject({ place: 0, shown: true });
    const back = cards().answer('8', 1000, 2000, 'done').shown(2100).key('back', 3000);
    expect(back.state).toMatchObject({ place: 0, shown: true });
  });
});
