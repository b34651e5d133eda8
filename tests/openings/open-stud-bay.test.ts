// Three bays of 14 1/2 × 3 1/2 in: board 3 · 50.75 ÷ 144 = 1.057292 ft²; edges 3 · 2 · 18 = 108 in;
// round bead 1/4 in: 108 · 0.0490874 = 5.301438 in³ ÷ 1.8046875 = 2.937593 fl oz.
import { expect, test } from 'vitest'
import { hours, needs, take } from './take.ts'

const bays = { kind: 'open-stud-bay', in: 'main', count: 3, sizeIn: [14.5, 3.5], at: 'stair wall' } as const

test('a board in each bay, sealed on four sides, 0.20 h each', () => {
  const m = take(bays)
  expect(needs(m)).toEqual({ 'block-bays-main': { 'gypsum-12': expect.closeTo(1.057292, 5), 'sealant-10oz': expect.closeTo(2.937593, 5) } })
  expect(hours(m)['block-bays-main']).toBeCloseTo(0.6, 9)
})
test('it is a large hole: closed before small ones', () => { expect(take(bays).tasks[0]).toMatchObject({ size: 'large', work: 'big-hole', phase: 'seal' }) })
