// A 3 in plastic stack, 3.5 in outside, in a 4 1/2 in hole: gap 1/2 in. Flange 1 in on each side: 4 · 6.5 = 26 in;
// round bead 1/4 in: 26 · 0.0490874 = 1.276272 in³ ÷ 1.8046875 = 0.707198 fl oz.
import { expect, test } from 'vitest'
import { cautions, codes, hours, needs, take } from './take.ts'

const stack = { kind: 'plumbing-stack', in: 'main', nominalIn: 3, material: 'pvc', holeIn: 4.5, at: 'bath' } as const

test('a collar and its bead, 0.30 h', () => {
  const m = take(stack)
  expect(needs(m)).toEqual({ 'collar-plumbing-stack-main-1': { 'stack-collar': 1, 'sealant-10oz': expect.closeTo(0.707198, 5) } })
  expect(hours(m)).toEqual({ 'collar-plumbing-stack-main-1': 0.3 })
})
test('nothing rigid on a pipe that moves', () => { expect(cautions(take(stack))).toMatch(/free to move: no foam/) })
test('a hole that leaves more than 3 in round it gets a rigid cover under the collar', () => {
  // hole 12: gap 4.25; board 16² ÷ 144 = 1.777778 ft²; bead 4 · 5.5 + 48 = 70 in · 0.0490874 ÷ 1.8046875 = 1.903996 fl oz
  expect(needs(take({ ...stack, holeIn: 12 }))['collar-plumbing-stack-main-1']).toEqual({ 'stack-collar': 1, 'gypsum-12': expect.closeTo(1.777778, 5), 'sealant-10oz': expect.closeTo(1.903996, 5) })
})
test('a stack larger than its hole is a finding', () => { expect(codes(take({ ...stack, holeIn: 3 }))).toEqual(['pipe-larger-than-hole']) })
