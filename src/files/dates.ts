// Days of the calendar.
import { DAY_PATTERN } from '../units/words.ts'

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** Days of a month, 1 to 12. */
const daysIn = (year: number, month: number): number => (month === 2 && (year % 4 === 0 && year % 100 !== 0 || year % 400 === 0) ? 29 : DAYS[month - 1]!)

/** What is wrong with a date of the form year-month-day: a month that has no such day. */
export function dateFault(date: string): { code: string; says: string; why: string; mend: string } | undefined {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number]
  const last = daysIn(year, month)
  return day > last ? { code: 'date-not-real', says: `the day ${date}`, why: `that month has ${last} days`, mend: 'write the day it was' } : undefined
}

/** Whether a text is a day of the calendar, written as 2026-04-01. */
export const isDay = (text: string): boolean => new RegExp(DAY_PATTERN).test(text) && dateFault(text) === undefined

/** The number of a day: one more for each later day, so that days can be counted. */
export function dayNumber(date: string): number {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number]
  const before = year - 1
  let days = before * 365 + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) + day
  for (let m = 1; m < month; m++) days += daysIn(year, m)
  return days
}

/** The date so many days later. */
export function daysLater(date: string, days: number): string {
  let [year, month, day] = date.split('-').map(Number) as [number, number, number]
  for (day += days; day > daysIn(year, month);) {
    day -= daysIn(year, month)
    if (++month > DAYS.length) { month = 1; year++ }
  }
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-')
}
