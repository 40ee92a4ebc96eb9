import { differenceInCalendarDays, parseISO } from 'date-fns';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dayNumber } from '../../src/readings/day-number';

it('differences of days are those of the registry library, over months, leap days and summer time', () => {
  const day = fc
    .date({ min: new Date('2020-01-01'), max: new Date('2040-12-31'), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10));
  fc.assert(
    fc.property(day, day, (one, other) => {
      expect(dayNumber(one) - dayNumber(other)).toBe(
        differenceInCalendarDays(parseISO(one), parseISO(other)),
      );
    }),
  );
  expect(dayNumber('2028-03-01') - dayNumber('2028-02-28')).toBe(2);
});
