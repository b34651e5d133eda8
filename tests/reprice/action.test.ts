// What is done with a quote: what binds, each date on its boundary, each threshold on its edge. The classes are common practice, no source.
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { actionOn, lastDay, needsDay, statusOn, type QuoteFacts, type Situation } from '../../src/estimate/quotes/quote-action.ts'
import { dayNumber, daysLater } from '../../src/files/dates.ts'

const thresholds = shelf(demoPrices, demoCompany).for({}).company.reprice
const own = shelf(demoPrices, { ...demoCompany, reprice: { honorUpToPct: 1, reissueAbovePct: 3, leastMarginPct: 38, reissueWithinDays: 10 } }).for({}).company.reprice

describe('days', () => {
  // By the calendar: leap years of four, not of a hundred, again of four hundred.
  test.each([
    ['2026-03-02', 30, '2026-04-01'], ['2026-01-31', 1, '2026-02-01'], ['2024-02-28', 1, '2024-02-29'], ['2026-02-28', 1, '2026-03-01'], ['2100-02-28', 1, '2100-03-01'], ['2000-02-28', 1, '2000-02-29'],
    ['2025-12-31', 1, '2026-01-01'], ['2025-12-31', 366, '2027-01-01'], ['2026-05-05', 0, '2026-05-05'],
  ])('%s and %i days: %s', (from, days, to) => {
    expect(daysLater(from, days)).toBe(to)
    expect(dayNumber(to) - dayNumber(from)).toBe(days)
  })
  test('days between dates are those of the calendar', () => {
    for (let year = 1999; year <= 2101; year++) expect(dayNumber(`${year + 1}-03-01`) - dayNumber(`${year}-03-01`)).toBe((Date.UTC(year + 1, 2, 1) - Date.UTC(year, 2, 1)) / 86_400_000)
  })
})

describe('where a quote stands', () => {
  const sent: QuoteFacts = { status: 'sent', sentOn: '2026-03-02' }
  test.each<[string, QuoteFacts, string | undefined, string]>([
    ['a draft stays a draft', { status: 'draft' }, '2026-04-01', 'draft'],
    ['sent without dates', { status: 'sent' }, undefined, 'sent'],
    ['the day it is sent', sent, '2026-03-02', 'sent'],
    ['the day before', sent, '2026-03-01', 'draft'],
    ['its last day, 30 after it was sent', sent, '2026-04-01', 'sent'],
    ['the day after', sent, '2026-04-02', 'expired'],
    ['a last day of its own counts for more', { ...sent, expiresOn: '2026-03-20' }, '2026-03-20', 'sent'],
    ['and the day after it', { ...sent, expiresOn: '2026-03-20' }, '2026-03-21', 'expired'],
    ['a last day without the day it was sent', { status: 'sent', expiresOn: '2026-03-20' }, '2026-03-21', 'expired'],
    ['signed binds beyond the last day', { status: 'signed', sentOn: '2026-03-02', signedOn: '2026-03-30' }, '2027-01-01', 'signed'],
    ['from the day it is signed', { status: 'signed', sentOn: '2026-03-02', signedOn: '2026-03-30' }, '2026-03-30', 'signed'],
    ['before that it was sent', { status: 'signed', sentOn: '2026-03-02', signedOn: '2026-03-30' }, '2026-03-29', 'sent'],
    ['signed without dates', { status: 'signed' }, undefined, 'signed'],
    ['expired is expired', { status: 'expired', expiresOn: '2026-05-01' }, '2026-04-01', 'expired'],
  ])('%s', (_, facts, on, status) => { expect(statusOn(facts, 30, on)).toBe(status) })
  test('a day is needed as soon as there is a date', () => {
    expect(needsDay({ status: 'sent' })).toBe(false)
    for (const key of ['sentOn', 'expiresOn', 'signedOn'] as const) expect(needsDay({ status: 'sent', [key]: '2026-03-02' })).toBe(true)
    expect(lastDay({ status: 'sent' }, 30)).toBeUndefined()
  })
})

describe('what is done', () => {
  const quiet: Situation = { status: 'sent', on: '2026-04-01', lastDay: '2026-04-01', shut: undefined, risePct: 0, honoredMarginPct: 40, clause: undefined }
  const action = (s: Partial<Situation>, by = thresholds): string => actionOn({ ...quiet, ...s }, by).action
  test.each([[-50, 'honor'], [0, 'honor'], [2, 'honor'], [2.04, 'honor'], [2.06, 'ask'], [2.1, 'ask'], [5, 'ask'], [5.04, 'ask'], [5.06, 're-issue'], [80, 're-issue']] as const)('sent, the price moves %f %%: %s', (risePct, what) => { expect(action({ risePct })).toBe(what) })
  test.each([[1, 'honor'], [1.1, 'ask'], [3, 'ask'], [3.1, 're-issue']] as const)('by thresholds of the company\'s own, %f %%: %s', (risePct, what) => { expect(action({ risePct }, own)).toBe(what) })
  test('a least margin asks, though the price moves little', () => {
    expect(action({ risePct: 0.5, honoredMarginPct: 38 }, own)).toBe('honor')
    expect(action({ risePct: 0.5, honoredMarginPct: 37.9 }, own)).toBe('ask')
    expect(action({ risePct: 0.5, honoredMarginPct: 5 })).toBe('honor')
  })
  test('signed is honored, unless its clause passes something on', () => {
    expect(action({ status: 'signed', risePct: 60 })).toBe('honor')
    expect(action({ status: 'signed', risePct: 1, clause: 'its clause passes on bags' })).toBe('re-issue')
  })
  test('a draft follows the price', () => {
    expect(action({ status: 'draft', risePct: 0.1 })).toBe('re-issue')
    expect(action({ status: 'draft', risePct: -0.1 })).toBe('re-issue')
    expect(action({ status: 'draft', risePct: 0 })).toBe('honor')
  })
  test.each([['2026-04-02', 're-issue'], ['2026-05-01', 're-issue'], ['2026-05-02', 'expire'], ['2027-01-01', 'expire']])('expired with its last day 2026-04-01, on %s: %s', (on, what) => { expect(action({ status: 'expired', on })).toBe(what) })
  test('expired without dates lapses', () => { expect(action({ status: 'expired', on: undefined, lastDay: undefined })).toBe('expire') })
  test.each(['draft', 'sent', 'expired'] as const)('%s on the day, signed later: somebody is asked, after what is shut', status => {
    expect(actionOn({ ...quiet, status, later: 'signed 2026-05-21' }, thresholds)).toEqual({ action: 'ask', why: 'signed 2026-05-21, later than --on' })
    expect(actionOn({ ...quiet, status, later: 'signed 2026-05-21', shut: 'main: too heavy' }, thresholds)).toEqual({ action: 'ask', why: 'main: too heavy; signed 2026-05-21, later than --on' })
  })
  test.each(['draft', 'sent', 'signed', 'expired'] as const)('%s and shut: somebody is asked', status => {
    expect(actionOn({ ...quiet, status, shut: 'main: too heavy', clause: 'x' }, thresholds)).toEqual({ action: 'ask', why: 'main: too heavy' })
    expect(action({ status, risePct: undefined })).toBe('ask')
  })
})
