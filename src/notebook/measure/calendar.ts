/** Days of the calendar as texts like 2026-02-28. A day has no time zone: it is what the reader's calendar says. */

const written = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days since the first of January 1970; undefined for what is no day of the calendar, 30 February among them. */
export function dayNumber(text: string): number | undefined {
  const [, year, month, day] = (written.exec(text) ?? []).map(Number);
  if (year === undefined || year < 1900 || year > 2199) return undefined;
  const time = Date.UTC(year, month! - 1, day!);
  return new Date(time).toISOString().startsWith(text) ? time / 86_400_000 : undefined;
}

/** The day with this number. */
export const dayText = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10);

/** Today on the reader's calendar and in their time zone. */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A day as it is read: "28 Feb 2026". Not in numbers, whose order differs between readers. */
export function dayWords(text: string): string {
  const [year, month, day] = text.split('-');
  return `${Number(day)} ${months[Number(month) - 1]} ${year}`;
}
