// Bands of a job's figures against jobs whose figures were worked out without the program.
import { describe, expect, test } from 'vitest'
import { outOfBand } from '../../src/estimate/bands.ts'
import { exactly } from '../../src/units/quantity.ts'

const h = (value: number) => exactly(value, 'h', 'by hand'), cents = (value: number) => exactly(value, 'cents', 'by hand')
const NOTHING_BESIDE = { besideCents: 0, besideMaterialsCents: 0 } as const
const job = (areaFt2: number, dollars: number, materials: number, hours: { seal: number; insulate: number; rest: number }, taxDollars = 0) => outOfBand({
  areaFt2, price: { directCents: cents(0), totalCents: cents(dollars * 100), materialsCents: cents(materials * 100), customerTaxCents: cents(taxDollars * 100) },
  byPhase: { seal: h(hours.seal), insulate: h(hours.insulate), clear: h(hours.rest) }, ...NOTHING_BESIDE,
}).map(f => f.code)

describe('a ranch of 1,344 ft², worked line by line', () => {
  // 12.7 h of sealing, 4.4 of blowing, 39 in all; $7,353 at 40 %, materials about $2,000.
  const hours = { seal: 12.7, insulate: 4.4, rest: 21.9 }
  test('lies in every band', () => expect(job(1344, 7353, 2000, hours)).toEqual([]))
  test('so does the same with hard access, at $6.60 for each ft²', () => expect(job(1344, 8870, 2000, { seal: 17.5, insulate: 4.7, rest: 27.8 })).toEqual([]))
  test('blown without sealing, at $2.30 for each ft², is far under them', () => {
    expect(job(1344, 3091, 1250, { seal: 0, insulate: 4.4, rest: 8 })).toEqual(['price-out-of-band', 'materials-out-of-band', 'sealing-out-of-band', 'hours-out-of-band'])
  })
  test('the area counted twice: half the price and half the hours for each ft²', () => expect(job(2688, 7353, 2000, { seal: 12.7, insulate: 4.4, rest: 21.9 })).toEqual(['hours-out-of-band']))
  test('clock hours of two people for person-hours, priced at double', () => expect(job(1344, 13000, 2700, { seal: 50, insulate: 17.6, rest: 44 })).toEqual(['price-out-of-band', 'hours-out-of-band']))
})

test('the worked house: $5,515, materials $1,506.12, 13.2 and 4.32 of 30.97 h', () => {
  expect(job(1344, 5515, 1506.12, { seal: 13.2, insulate: 4.32, rest: 13.45 })).toEqual([])
})

test('ducts, tests and other trades come on top: a third of the direct cost beside leaves two thirds of the price to look at', () => {
  // $12,000 · (1 − 2,400 ÷ 7,200) = $8,000 for 1,344 ft²: 5.95; materials (2,400 − 400) of it 25 %.
  const figures = (besideCents: number) => outOfBand({ areaFt2: 1344, price: { directCents: cents(720000), totalCents: cents(1200000), materialsCents: cents(240000) }, byPhase: { seal: h(12.7), insulate: h(4.4), clear: h(20), ducts: h(30), wrap: h(30) }, besideCents, besideMaterialsCents: besideCents / 6 })
  expect(figures(240000).map(f => f.code)).toEqual([])
  expect(figures(0).map(f => f.code)).toEqual([])
  expect(figures(0).concat(outOfBand({ areaFt2: 1300, price: { directCents: cents(720000), totalCents: cents(1200000), materialsCents: cents(240000) }, byPhase: { seal: h(12.7), insulate: h(4.4), clear: h(20) }, ...NOTHING_BESIDE })).map(f => f.code)).toEqual(['price-out-of-band'])
})

describe('no band', () => {
  const bad = { seal: 0, insulate: 1, rest: 1 }
  test('under 600 ft², where the minimum charge sets the price', () => expect(job(599, 850, 10, bad)).toEqual([]))
  test('of price for each ft² outside 900 to 2,500 ft²', () => {
    expect(job(899, 20000, 5000, bad)).not.toContain('price-out-of-band')
    expect(job(900, 20000, 5000, bad)).toContain('price-out-of-band')
    expect(job(2501, 200, 50, bad)).not.toContain('price-out-of-band')
  })
  test('where nothing is blown, or nothing priced', () => {
    expect(outOfBand({ areaFt2: 0, price: { directCents: cents(0), totalCents: cents(100), materialsCents: cents(1) }, byPhase: { seal: h(1) }, ...NOTHING_BESIDE })).toEqual([])
    expect(outOfBand({ areaFt2: 1344, price: { directCents: cents(0) }, byPhase: { insulate: h(1) }, ...NOTHING_BESIDE })).toEqual([])
  })
  test('on the customer’s tax', () => expect(job(1000, 9630, 2500, { seal: 12, insulate: 4, rest: 16 }, 630)).toEqual([]))
})
