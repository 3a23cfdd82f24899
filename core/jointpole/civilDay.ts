const daysPerEra = 146_097;

/**
 * Days since 1 January 1970 of a day written as 2026-03-02.
 *
 * @throws RangeError when there is no such day
 * @source days of the Gregorian calendar counted in eras of 400 years from 1 March; arithmetic
 */
export function dayNumber(iso: string): number {
  const [year = Number.NaN, month = 0, day = 0] = iso.split("-").map(Number);
  const marchYear = month > 2 ? year : year - 1;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  const days = era * daysPerEra + dayOfEra - 719_468;
  if (!Number.isInteger(days) || dayText(days) !== iso) throw new RangeError(`${iso} is no day of the calendar`);
  return days;
}

/** The day so many days after 1 January 1970, as 2026-03-02. */
export function dayText(days: number): string {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / daysPerEra);
  const dayOfEra = shifted - era * daysPerEra;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const part = Math.floor((5 * dayOfYear + 2) / 153);
  const month = part < 10 ? part + 3 : part - 9;
  const day = dayOfYear - Math.floor((153 * part + 2) / 5) + 1;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** The day so many business days later: Monday to Friday; holidays are not known here. */
export function afterBusinessDays(days: number, count: number): number {
  let [at, left] = [days, count];
  while (left > 0) {
    at += 1;
    const weekday = (((at + 3) % 7) + 7) % 7; // 0 is Monday: 1 January 1970 was a Thursday
    if (weekday < 5) left -= 1;
  }
  return at;
}
