// Seven boots of 4 × 10 in: 7 · 28 = 196 in of seam; 1/4 in round: 196 · 0.0490874 = 9.621128 in³ ÷ 1.8046875 = 5.331187 fl oz.
import { expect, test } from 'vitest'
import { cautions, hours, needs, take } from './take.ts'

const boots = { kind: 'duct-boot', in: 'main', count: 7, sizeIn: [4, 10], gapIn: 0.25, at: 'all rooms' } as const

test('to 1/4 in sealant, 0.25 h each', () => {
  const m = take(boots)
  expect(needs(m)).toEqual({ 'seal-boots-main': { 'sealant-10oz': expect.closeTo(5.331187, 5) } })
  expect(hours(m)['seal-boots-main']).toBeCloseTo(1.75, 9)
})
test('over 1/4 in foam, as wide as the gap: 1/2 in takes four times as much', () => {
  expect(needs(take({ ...boots, gapIn: 0.5 }))['seal-boots-main']).toEqual({ 'gun-foam-24oz': expect.closeTo(4 * 5.331187, 4) })
})
test('old wrap is not touched', () => { expect(cautions(take(boots))).toMatch(/asbestos: touch nothing/) })
