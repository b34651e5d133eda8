// A door of 48 × 24 in: edge 144 in = 12 ft; bead 1/4 in: 144 · 0.0490874 ÷ 1.8046875 = 3.916791 fl oz; panel 8 ft².
import { expect, test } from 'vitest'
import { hours, needs, take } from './take.ts'

const door = { kind: 'attic-door', in: 'main', sizeIn: [48, 24], panelR: 0, gasket: 'no', latch: 'no', at: 'upper bedroom' } as const

test('frame, gasket, latch, panel', () => {
  expect(needs(take(door))).toEqual({ 'fit-attic-door-main-1': { 'sealant-10oz': expect.closeTo(3.916791, 5), 'weatherstrip-17ft': 12, 'latch-pair': 1, 'mineral-wool-r23': 8, 'gypsum-12': 8 } })
  expect(hours(take(door))).toEqual({ 'fit-attic-door-main-1': 1 })
})
test('what is good is left', () => {
  const m = take({ ...door, panelR: 10, gasket: 'yes', latch: 'yes' })
  expect(Object.keys(needs(m)['fit-attic-door-main-1']!)).toEqual(['sealant-10oz'])
  expect(m.figures.method).toBe('frame sealed')
})
test('a wall is no part of the ceiling', () => { expect(take(door).paths).toBeUndefined() })
