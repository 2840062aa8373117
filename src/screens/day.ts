import { LOCALE } from './words.ts';

const dayAndMonth = new Intl.DateTimeFormat(LOCALE, { day: 'numeric', month: 'short', timeZone: 'UTC' });
const dayMonthYear = new Intl.DateTimeFormat(LOCALE, {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});

/** A date with its year: `2 May 2026`. */
export function dayWithYear(date: string): string {
  return dayMonthYear.format(new Date(date));
}

/** A date as a golfer says it, with the year only when it is another year than that of `now`: `2 May`. */
export function day(date: string, now: string): string {
  return date.slice(0, 4) === now.slice(0, 4) ? dayAndMonth.format(new Date(date)) : dayWithYear(date);
}

const dayAndTime = new Intl.DateTimeFormat(LOCALE, {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});

/** A moment on the golfer's own clock: `2 May, 09:12`. */
export function moment(instant: string): string {
  return dayAndTime.format(new Date(instant));
}
