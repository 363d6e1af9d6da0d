/**
 * Days as whole numbers: the date on the reader's own calendar, counted from January 1, 1970. A difference of two is a number
 * of days whatever the clock does in between: summer time, a leap day, another time zone.
 */

const msPerDay = 86_400_000;

/** The day that the reader's calendar shows at this moment. */
export const dayOf = (moment: Date): number =>
  Math.floor(Date.UTC(moment.getFullYear(), moment.getMonth(), moment.getDate()) / msPerDay);

export const today = (): number => dayOf(new Date());

/** "December 1", and with the year where that is another than today's. */
export function dateOf(day: number, now: number): string {
  const date = new Date(day * msPerDay);
  const sameYear = date.getUTCFullYear() === new Date(now * msPerDay).getUTCFullYear();
  return date.toLocaleDateString('en-US', {
    timeZone: 'UTC',
    month: 'long',
    day: 'numeric',
    ...(!sameYear && { year: 'numeric' }),
  });
}

/** "tomorrow, November 29", "in 11 days, on December 9". */
export function whenOf(day: number, now: number): string {
  const days = day - now;
  if (days <= 0) return 'today';
  return days === 1 ? `tomorrow, ${dateOf(day, now)}` : `in ${days} days, on ${dateOf(day, now)}`;
}
