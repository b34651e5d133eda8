// Money against whole-number arithmetic: digits as they are written, no binary fraction anywhere.
import { Decimal } from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { lineCents, pctOf, roundingAdded, sale } from '../../src/calc/price.ts'
import { cents, decimal, halfUp, minusExactly, roundUp, timesToWhole, usd } from '../../src/units/money.ts'

/** Digits and decimals of a figure as a person writes it. */
const written = (digits: number, decimals: number): string => {
  const text = String(digits).padStart(decimals + 1, '0')
  return decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`
}
/** a ÷ b, half up, in whole numbers. */
const divided = (a: bigint, b: bigint): number => Number((2n * a + b) / (2n * b))

const figure = fc.tuple(fc.integer({ min: 0, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }))

describe('amount times price', () => {
  test('is the product of the written decimals, half up', () => {
    fc.assert(fc.property(figure, figure, fc.constantFrom(1, 100), ([a, da], [b, db], over) => {
      expect(timesToWhole(Number(written(a, da)), Number(written(b, db)), over)).toBe(divided(BigInt(a) * BigInt(b), 10n ** BigInt(da + db) * BigInt(over)))
    }), { numRuns: 500, seed: 3 })
  })
  // decimal.js multiplies digits too, by code of its own. Most of these are beyond what whole numbers of the engine hold.
  test('of any size, sign and number of decimals', () => {
    const Wide = Decimal.clone({ precision: 60 })
    const any = fc.tuple(fc.oneof(fc.integer({ min: -99_999, max: 99_999 }), fc.maxSafeInteger().filter(n => Math.abs(n) < 1e15)), fc.integer({ min: 0, max: 9 })).map(([digits, decimals]) => (digits < 0 ? `-${written(-digits, decimals)}` : written(digits, decimals)))
    fc.assert(fc.property(any, any, fc.constantFrom(1, 100), (a, b, over) => {
      expect(timesToWhole(Number(a), Number(b), over) + 0).toBe(new Wide(a).times(b).div(over).toDecimalPlaces(0, Decimal.ROUND_HALF_CEIL).toNumber() + 0)
    }), { numRuns: 3000, seed: 7 })
  })
  test.each([
    [1.005, 100, 101, 'binary fractions make 100.49999999999999'], [0.285, 100, 29, '28.499999999999996'], [2.675, 100, 268, '267.49999999999994'], [8.165, 100, 817, '816.4999999999999'],
    [8.67, 175, 1517, 'curb: 1,517.25'], [4.59, 175, 803, 'panel batt: 803.25'], [17.22, 500, 8610, 'sealant'], [1.12, 1200, 1344, 'hot sealant'],
    [3200, 0.0312, 100, '99.84: a price with more than two decimals'],
  ])('%f × %f cents is %i (%s)', (amount, unitPriceCents, expected) => expect(lineCents.fn({ amount, unitPriceCents })).toBe(expected))
  test.each([[150612, 7, 10543], [299268, 7, 20949], [50, 1, 1], [49, 1, 0], [100000, 6.25, 6250], [12345, 8.875, 1096]])('%i cents at %f %% are %i', (sum, pct, expected) => expect(pctOf.fn({ cents: sum, pct })).toBe(expected))
})

describe('price from margin', () => {
  test('is cost ÷ (100 − margin) · 100 in whole numbers, half up', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 1_000_000_000 }), fc.integer({ min: 0, max: 900 }), (costCents, tenths) => {
      expect(sale.fn({ costCents, marginPct: Number(written(tenths, 1)) })).toBe(divided(BigInt(costCents) * 1000n, BigInt(1000 - tenths)))
    }), { numRuns: 500, seed: 4 })
  })
})

describe('rounding', () => {
  test('up to the step is the next multiple, never a whole step', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 100_000_000 }), fc.constantFrom(1, 100, 500, 1000, 2500), (priceCents, stepCents) => {
      const added = roundingAdded.fn({ priceCents, stepCents })
      expect((priceCents + added) % stepCents).toBe(0)
      expect(added).toBeGreaterThanOrEqual(0)
      expect(added).toBeLessThan(stepCents)
    }), { numRuns: 300, seed: 5 })
  })
  test.each([[2.22495, 0.01, 2.22], [1.125, 0.01, 1.13], [1.005, 0.01, 1.01], [0.5, 1, 1], [2.4999, 1, 2]])('%f to %f, half up, is %f', (x, step, expected) => expect(halfUp(x, step)).toBe(expected))
  test.each([[0.1 + 0.2, 0.1, 0.3], [1.1309, 0.01, 1.14], [12.000000000000002, 1, 12], [12.001, 1, 13], [10.837, 0.25, 11]])('%f up to %f is %f', (x, step, expected) => expect(roundUp(x, step)).toBe(expected))
})

describe('dollars to cents', () => {
  test.each([[14.9, 1490], [0.0312, 3.12], [4.5, 450], [5, 500], [1.005, 100.5], [0.29, 29], [1e-7, 1e-5], [1e6, 1e8]])('$%f', (usd, expected) => expect(cents(usd)).toBe(expected))
  test('moves the point of what is written, nothing else', () => {
    fc.assert(fc.property(figure, ([digits, decimals]) => {
      const [n, shift] = decimal(cents(Number(written(digits, decimals))))
      expect(n * 10n ** BigInt(decimals)).toBe(BigInt(digits) * 100n * 10n ** BigInt(shift))
    }), { numRuns: 500, seed: 6 })
  })
  test('every demo price is whole cents', () => {
    for (const p of [...demoPrices.products, ...demoPrices.blown]) expect(cents(p.price) % 1, p.item).toBe(0)
    expect(cents(demoCompany.wage)).toBe(4800)
  })
})

describe('digits of a number', () => {
  test.each([[14.9, 149n, 1], [0, 0n, 0], [1200, 1200n, 0], [1e21, 10n ** 21n, 0], [1.5e22, 15n * 10n ** 21n, 0], [1e-7, 1n, 7], [2.5e-9, 25n, 10], [-3.25, -325n, 2]])('%f', (x, digits, shift) => expect(decimal(x)).toEqual([digits, shift]))
  test.each([[-1.5, 1, -1], [-1.6, 1, -2], [-0.4, 1, 0], [-2.5, 100, -250], [2.5, 1, 3]])('%f × %f is %f to the whole, half up also below 0', (a, b, whole) => expect(timesToWhole(a, b) + 0).toBe(whole))
  test.each([[123450, '$1,234.50'], [5, '$0.05'], [100, '$1.00'], [3.12, '$0.0312'], [123456789, '$1,234,567.89'], [100000000, '$1,000,000.00']])('%f cents as %s', (c, text) => expect(usd(c)).toBe(text))
  test.each([[64.1, 63.47, 0.63], [1, 3, -2], [0.3, 0.1, 0.2], [1.25, 0.5, 0.75], [5, 5, 0]])('%f − %f is %f', (a, b, d) => expect(minusExactly(a, b)).toBe(d))
})
