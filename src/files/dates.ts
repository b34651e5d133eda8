// Days of the calendar.
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** Days of a month, 1 to 12. */
const daysIn = (year: number, month: number): number => (month === 2 && (year % 4 === 0 && year % 100 !== 0 || year % 400 === 0) ? 29 : DAYS[month - 1]!)

/** What is wrong with a date of the form year-month-day: a month that has no such day. */
export function dateFault(date: string): { code: string; says: string; why: string; mend: string } | undefined {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number]
  const last = daysIn(year, month)
  return day > last ? { code: 'date-not-real', says: `the day ${date}`, why: `that month has ${last} days`, mend: 'write the day it was' } : undefined
}
