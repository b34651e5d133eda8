// A stair of 54 × 22 1/2 in: edge 2 · 76.5 = 153 in = 12.75 ft (its gap is listed so); bead 1/4 in: 153 · 0.0490874 ÷ 1.8046875 = 4.161590 fl oz;
// opening 54 · 22.5 ÷ 144 = 8.4375 ft²; films and board R 1.67, with the R-20 cover 21.67.
import { expect, test } from 'vitest'
import { hours, needs, take } from './take.ts'

const stair = { kind: 'pull-down-stair', in: 'main', sizeIn: [54, 22.5], panelR: 0, gasket: 'no', at: 'hall' } as const

test('frame, gasket, cover; a curb before the fill; shut after it', () => {
  const m = take(stair)
  expect(needs(m)).toEqual({ 'fit-pull-down-stair-main-1': { 'sealant-10oz': expect.closeTo(4.16159, 5), 'weatherstrip-17ft': 12.75, 'stair-cover-rigid': 1 }, 'curb-pull-down-stair-main-1': { 'dam-rigid': 12.75 }, 'shut-pull-down-stair-main-1': {} })
  expect(hours(m)).toEqual({ 'fit-pull-down-stair-main-1': 1.5, 'curb-pull-down-stair-main-1': 0.6, 'shut-pull-down-stair-main-1': 0.1 })
  expect(m.tasks.map(t => t.phase)).toEqual(['seal', 'contain', 'close'])
  expect(m.paths!.map(p => [p.areaFt2.value, p.rBefore!.value, p.rAfter.value])).toEqual([[8.4375, 1.67, expect.closeTo(21.67, 9)]])
  expect(m.tasks[1]!.title).toContain('20 in high')
})
test('covered to R-20 and gasketed: the frame alone', () => {
  const m = take({ ...stair, panelR: 20, gasket: 'yes' }, false)
  expect(needs(m)).toEqual({ 'fit-pull-down-stair-main-1': { 'sealant-10oz': expect.closeTo(4.16159, 5) } })
  expect(m.paths![0]!.rAfter.value).toBeCloseTo(21.67, 9)
})
