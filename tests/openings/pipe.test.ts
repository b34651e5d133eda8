// The 2 in plastic pipe, 2.375 in outside, in a 3 in hole: gap (3 − 2.375) ÷ 2 = 0.3125 in, open π ÷ 4 · (9 − 5.640625) = 2.638447 in²;
// two of them, 1 in deep: 5.276894 in³ ÷ 1.8046875 = 2.923993 fl oz of foam.
import { expect, test } from 'vitest'
import type { Quantity } from '../../src/units/quantity.ts'
import { cautions, codes, hours, needs, take } from './take.ts'

const pipes = { kind: 'pipe', in: 'main', count: 2, nominalIn: 2, material: 'pvc', holeIn: 3, at: 'bath' } as const
const figure = (m: ReturnType<typeof take>, name: string) => (m.figures[name] as Quantity).value

test('2 in plastic in a 3 in hole: the gap is over 1/4 in, so foam', () => {
  const m = take(pipes)
  expect(figure(m, 'gapIn')).toBe(0.3125)
  expect(figure(m, 'openIn2')).toBeCloseTo(2 * 2.638447, 5)
  expect(needs(m)).toEqual({ 'seal-pipes-main': { 'gun-foam-24oz': expect.closeTo(2.923993, 5) } })
  expect(m.figures.method).toBe('foam with backing')
  expect(hours(m)).toEqual({ 'seal-pipes-main': 0.2 })
})
test('outside diameters are of the material: 3/4 in copper is 7/8 in outside, its gap in 1 1/8 in is 1/8 in', () => {
  // ring π · 0.875 = 2.748894 in; round bead 1/4 in: · 0.0490874 = 0.134936 in³ = 0.0747697 fl oz
  const m = take({ ...pipes, count: 1, nominalIn: 0.75, material: 'copper', holeIn: 1.125 })
  expect(figure(m, 'gapIn')).toBe(0.125)
  expect(needs(m)['seal-pipes-main']!['sealant-10oz']).toBeCloseTo(0.0747697, 6)
})
test('a gap over 3 in takes a rigid cover: 4 in cast iron, 4.38 in outside, in a 12 in hole, gap 3.81 in', () => {
  // board (12 + 4)² ÷ 144 = 1.777778 ft²; bead π · 4.38 + 48 = 61.760176 in · 0.0490874 ÷ 1.8046875 = 1.679873 fl oz
  const m = take({ ...pipes, count: 1, nominalIn: 4, material: 'cast-iron', holeIn: 12 })
  expect(needs(m)['seal-pipes-main']).toEqual({ 'gypsum-12': expect.closeTo(1.777778, 5), 'sealant-10oz': expect.closeTo(1.679873, 5) })
  expect(m.figures.method).toBe('rigid cover, sealed edge')
})
test('CPVC gets compatible sealant, never foam, and says so', () => {
  // 3/4 in CPVC is copper tube size: 0.875 in outside; hole 1 3/4: gap 0.4375; open 0.785398 · (3.0625 − 0.765625) = 1.803961 in² = 0.999598 fl oz
  const m = take({ ...pipes, count: 1, nominalIn: 0.75, material: 'cpvc', holeIn: 1.75 })
  expect(needs(m)['seal-pipes-main']).toEqual({ 'compatible-sealant-10oz': expect.closeTo(0.999598, 5) })
  expect(cautions(m)).toMatch(/CPVC.*compatible/)
  expect(cautions(m)).not.toMatch(/propellant/)
})
test('a pipe larger than its hole, and a size that is not made, are findings and nothing is priced', () => {
  for (const [item, code] of [[{ ...pipes, holeIn: 2.25 }, 'pipe-larger-than-hole'], [{ ...pipes, nominalIn: 2.5 }, 'pipe-size-unlisted'], [{ ...pipes, material: 'cast-iron', nominalIn: 1 }, 'pipe-size-unlisted']] as const) {
    expect(codes(take(item))).toEqual([code])
    expect(take(item).tasks).toEqual([])
  }
})
