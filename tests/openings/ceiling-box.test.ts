// Five round boxes of 4 in: π · 4 · 5 = 62.831853 in of seam; round bead 1/4 in: · 0.0490874 = 3.084251 in³ ÷ 1.8046875 = 1.709022 fl oz.
import { expect, test } from 'vitest'
import { cautions, gates, hours, needs, take } from './take.ts'

const boxes = { kind: 'ceiling-box', in: 'main', count: 5, at: 'bedrooms' } as const

test('sealed before the fill, flagged where it buries them', () => {
  const m = take(boxes)
  expect(needs(m)).toEqual({ 'seal-boxes-main': { 'sealant-10oz': expect.closeTo(1.709022, 5) }, 'flag-boxes-main': { 'box-flag': 5 } })
  expect(hours(m)['seal-boxes-main']).toBeCloseTo(0.75, 9)
  expect(hours(m)['flag-boxes-main']).toBeCloseTo(0.15, 9)
  expect(m.tasks.map(t => t.phase)).toEqual(['seal', 'contain'])
  expect(gates(m)).toEqual([])
})
test('no flag where nothing is blown', () => { expect(Object.keys(needs(take(boxes, false)))).toEqual(['seal-boxes-main']) })
test('nothing is foamed inside a box', () => { expect(cautions(take(boxes))).toMatch(/No foam and no sealant inside a box/) })
test('open wires hold the fill until an electrician has covered them; unknown is noted', () => {
  const open = take({ ...boxes, open: 'yes' })
  expect(gates(open)).toEqual(['hold box-open'])
  expect(open.gates![0]!.stops).toEqual({ phases: ['wrap', 'insulate'], places: ['main'] })
  expect(open.tasks.find(t => t.id === open.gates![0]!.clearedByTask)).toMatchObject({ phase: 'clear', role: 'electrician', ownVisit: true })
  expect(gates(take({ ...boxes, open: 'unknown' }))).toEqual(['note box-cover-unknown'])
  expect(gates(take({ ...boxes, open: 'no' }))).toEqual([])
})
