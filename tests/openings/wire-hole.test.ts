// 22 holes of 3/4 in: π ÷ 4 · 0.75² = 0.441786 in² each, 9.71930 in² in all; 1 in deep 9.71930 in³; ÷ 1.8046875 in³ per fl oz = 5.38558 fl oz.
import { expect, test } from 'vitest'
import { cautions, hours, needs, take } from './take.ts'

const wires = { kind: 'wire-hole', in: 'main', count: 22, holeIn: 0.75, at: 'inside walls' } as const

test('holes over 1/4 in are foamed (SWS 3.0101.1), 1 in deep', () => {
  const m = take(wires)
  expect(needs(m)['seal-wires-main']!['gun-foam-24oz']).toBeCloseTo(5.38558, 4)
  expect(m.figures.method).toBe('foam with backing')
  expect(hours(m)['seal-wires-main']).toBeCloseTo(22 * 0.05, 9)
})
test('holes to 1/4 in take sealant: 10 of them hold 10 · 0.0490874 in³ = 0.272000 fl oz', () => {
  expect(needs(take({ ...wires, count: 10, holeIn: 0.25 }))['seal-wires-main']!['sealant-10oz']).toBeCloseTo(0.272, 5)
})
test('live and old wire, and foam, are warned of', () => {
  expect(cautions(take(wires))).toMatch(/Live wires.*knobs.*firestop.*flammable propellant/)
  expect(cautions(take({ ...wires, holeIn: 0.25 }))).not.toMatch(/propellant/)
})
