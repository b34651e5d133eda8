// Tables of a whole office: sums of any size stand apart, at any width of the terminal.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { RepriceTotals } from '../../src/estimate/quotes/reprice-totals.ts'
import { terminalPriceDiff } from '../../src/papers/price-diff.ts'
import { terminalRepriced, type RepriceRow } from '../../src/papers/reprice.ts'

const cents = fc.integer({ min: -99_999_999_999, max: 99_999_999_999 })
/** Each figure as it must stand: alone between blanks. */
const FIGURE = /^[+-]?\d{1,3}(,\d{3})*\.\d\d$/
const figures = (text: string): string[] => text.split('\n').flatMap(l => l.split(/ +/)).filter(word => /\d\.\d\d/.test(word))

test('re-priced jobs', () => {
  fc.assert(fc.property(cents, cents, cents, fc.constantFrom(60, 80, 100), (a, b, c, width) => {
    const sums = { jobs: 1234, oldCents: a, changeCents: b, lossCents: c }
    const totals: RepriceTotals = { ...sums, newCents: a, unpriced: 0, byStatus: [{ ...sums, status: 'sent' }], byAction: [{ ...sums, action: 're-issue' }], items: [{ item: 'x', name: 'a sealant', jobs: 1234, costCents: c, priceCents: b }], otherItems: { items: 7, costCents: b, priceCents: c }, laborCents: a, otherCents: 0, minimumCents: c, roundingCents: 1 } as RepriceTotals
    const row: RepriceRow = { file: 'a', id: 'house-number-100', status: 'sent', oldCents: a, newCents: b, changeCents: c, honoredMarginPct: 38.1, lossCents: b, action: 'honor', why: 'under the threshold' }
    const text = terminalRepriced({ from: 'old', to: 'new' }, [row], totals, { width, color: false, ascii: true }), all = figures(text)
    expect(all.length).toBeGreaterThan(15)
    expect(all.filter(f => !FIGURE.test(f))).toEqual([])
    expect(text.split(/\s+/)).toEqual(expect.arrayContaining(['house-number-100', 're-issue']))
  }), { numRuns: 100, seed: 8 })
})

test('two price books', () => {
  fc.assert(fc.property(cents, cents, fc.integer({ min: 1, max: 999_999_999 }), (effectCents, all, priceCents) => {
    const text = terminalPriceDiff({ format: 'lidwork-prices-diff/1', old: { name: 'a', dated: 'b' }, new: { name: 'c', dated: 'd' }, jobs: 3, effectCents: all, items: [{ item: 'x', name: 'a sealant', change: 'changed', oldPriceCents: priceCents, newPriceCents: priceCents, changePct: 1.5, also: [], effectCents, jobs: 3 }] }, { width: 80, color: false, ascii: true })
    expect(figures(text).filter(f => !FIGURE.test(f))).toEqual([])
    expect(figures(text)).toHaveLength(4)
  }), { numRuns: 100, seed: 9 })
})
