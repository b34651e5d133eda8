// The schedule for change orders, by hand: what one more costs at the demo rates and a margin of 40 %.
import { expect, test } from 'vitest'
import { unitPrices } from '../../src/estimate/money/unit-prices.ts'
import { exactly } from '../../src/units/quantity.ts'
import { lidwork } from '../cli/test-io.ts'
import { books } from '../openings/take.ts'
import { readFileSync } from 'node:fs'

const by = Object.fromEntries(unitPrices(books, exactly(16, 'in', 'blown top of these tests')).map(u => [u.id, u.priceCents.value]))

test('an hour: 48.00 and 7 % contingency, ÷ 0.6 = 85.60, to the dollar 86', () => expect(by['person-hour']).toBe(8600))
test('a wire hole: 0.05 h is 2.40; (2.40 + a trace of sealant) · 1.07 ÷ 0.6 is under 5', () => expect(by['wire-hole']).toBe(500))
test('a foot of inside plate, to the cent', () => {
  // Two seams: 24 in round 1/4: 24 · 0.0490874 ÷ 1.8046875 = 0.6528 fl oz, + 10 % ÷ 10.1 = 0.0711, up to 0.08 tube: 0.40, tax 0.03. 0.025 h rounds to 0.03: 1.44.
  // 0.40 + 0.03 + 1.44 = 1.87; 7 % of 1.84 = 0.13; 2.00 ÷ 0.6 = 3.33.
  expect(by['plate-inside']).toBe(333)
})
test('a swap is the electrician’s price and the light: 185 + 38 + 2.66 tax, 7 % of 38; its trim and no more', () => {
  // 2 % of nothing else: 185 + 38.00 + 2.66 + 2.66 = 228.32, and the trim: 0.15 h = 7.20, sealant 0.52 fl oz or 0.06 tube = 0.30, tax 0.02, contingency 0.53: 236.37 ÷ 0.6 = 393.95.
  expect(by['light-swap']).toBe(39400)
})
test('what takes longer costs more', () => {
  expect(by['light-airtight']).toBeLessThan(by['light-ic']!)
  expect(by['light-ic']).toBeLessThan(by['light-box']!)
  expect(by['open-stud-bay']).toBeLessThan(by['open-chase']!)
})
test('on the terminal and for programs only where it is asked for', async () => {
  const files = { 'a.job.yaml': readFileSync(new URL('../../examples/quince-lane-14.job.yaml', import.meta.url), 'utf8') }
  expect((await lidwork('estimate a.job.yaml', { files })).out).not.toContain('unit prices')
  expect((await lidwork('estimate a.job.yaml --unit-prices', { files })).out).toMatch(/unit prices, for change orders +\$\n(.*\n)+.*person-hour +86\.00/)
  expect(JSON.parse((await lidwork('estimate a.job.yaml --json', { files })).out)).not.toHaveProperty('unitPrices')
  expect((JSON.parse((await lidwork('estimate a.job.yaml --json --unit-prices', { files })).out) as { unitPrices: object[] }).unitPrices).toContainEqual({ id: 'person-hour', what: 'work not listed here', unit: 'person-hour', priceCents: 8600 })
})
