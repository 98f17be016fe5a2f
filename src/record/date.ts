// Says whether a word is a day of the calendar; knows no clock and no file.

const written = /^(\d{4})-(\d{2})-(\d{2})$/;

/** True for `YYYY-MM-DD` that the Gregorian calendar has (ISO 8601). */
export function isDate(word: string): boolean {
  const match = written.exec(word);
  if (match === null) return false;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
}

function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/**
 * Whether somebody born on a day, or in a year, is under eighteen on another day; of a year alone the last day of it is taken,
 * so that nobody is taken for older than they may be. Both must be written as above, or the first as four digits.
 */
export function isMinorOn(born: string, day: string): boolean {
  const latest = /^\d{4}$/.test(born) ? `${born}-12-31` : born;
  const comesOfAge = `${String(Number(latest.slice(0, 4)) + 18).padStart(4, '0')}${latest.slice(4)}`;
  // Days in this form come in the order of their letters.
  return day < comesOfAge;
}
