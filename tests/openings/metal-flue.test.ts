// A vent of 4 in, outside, in a frame of 9 × 9 in: gap 2.5 in. Bead 3/8 in on 36 + π · 4 = 48.566371 in: · 0.110446617 ÷ 1.8046875 = 2.972255 fl oz.
// Shield by its label 1 in off: across 6 in, π · 6 = 18.849556 in = 1.570796 ft · 0.06 = 0.094248 h; without a label 3 in off: across 10 in, bare square 100 ÷ 144 = 0.694444 ft².
import { expect, test } from 'vitest'
import { metalFlue } from '../../src/scope/openings/metal-flue.ts'
import { cautions, codes, gates, hours, needs, take } from './take.ts'

const vent = { kind: 'metal-flue', in: 'main', type: 'b-vent', diameterIn: 4, framedIn: [9, 9], labelClearanceIn: 1, at: 'bath closet' } as const
const { labelClearanceIn: _, ...noLabel } = vent

test('gas vent: collar and shield set, noncombustible sealant, the label’s distance', () => {
  const m = take(vent)
  expect(needs(m)).toEqual({ 'close-metal-flue-main-1': { 'flue-collar-set': 1, 'noncombustible-sealant-10oz': expect.closeTo(2.972255, 5) }, 'shield-metal-flue-main-1': {} })
  expect(hours(m)).toEqual({ 'close-metal-flue-main-1': 1, 'shield-metal-flue-main-1': expect.closeTo(0.094248, 6) })
  expect(m.tasks[1]!.title).toBe('Insulation shield 1 in off the vent all round, 20 in high, closed below, open on top')
  expect(m.paths![0]!.areaFt2.value).toBe(0.25)
  expect([gates(m), codes(m)]).toEqual([[], []])
})
test('without a label fill stays 3 in off', () => {
  const m = take(noLabel)
  expect(m.tasks[1]!.title).toContain('3 in off')
  expect(m.paths![0]!.areaFt2.value).toBeCloseTo(0.694444, 5)
})
test('framing nearer than the label, or than 1 in, holds the fill', () => {
  expect(gates(take({ ...noLabel, framedIn: [5.5, 9] }))).toEqual(['hold framing-near-flue'])
  expect(gates(take({ ...noLabel, framedIn: [6, 9] }))).toEqual([])
  expect(gates(take({ ...vent, framedIn: [7, 9], labelClearanceIn: 2 }))).toEqual(['hold framing-near-flue'])
})
test('factory chimney: the maker’s parts by model; the cooling space stays free', () => {
  const m = take({ ...noLabel, type: 'factory-chimney', diameterIn: 8, framedIn: [14, 14], model: 'Invented HT-6' })
  // bead on the frame alone: 56 · 0.110446617 ÷ 1.8046875 = 3.427192 fl oz
  expect(needs(m)['close-metal-flue-main-1']).toEqual({ 'chimney-firestop-set': 1, 'noncombustible-sealant-10oz': expect.closeTo(3.427192, 5) })
  expect(cautions(m)).toMatch(/Cooling air.*nothing is closed or packed/)
})
test.each([['factory-chimney', 'chimney-model-unknown'], ['single-wall', 'single-wall-through-ceiling'], ['transite', 'transite-vent']] as const)('%s: a stop, nothing priced there', (type, code) => {
  const m = take({ ...noLabel, type })
  expect(gates(m)).toEqual([`stop ${code}`])
  expect(m.gates![0]).toMatchObject({ stops: { phases: ['wrap', 'insulate'], places: ['main'] }, clearable: [] })
  expect(m.tasks).toEqual([])
})
test('plastic vent: compatible sealant, no foam over a joint; in fill unless its label says', () => {
  // 3 1/2 in outside: π · 3.5 = 10.995574 in; 1/4 in bead: · 0.0490874 ÷ 1.8046875 = 0.299079 fl oz; board (7 + 4)² ÷ 144 = 0.840278 ft²; frame 28 in: 0.761598 fl oz
  const item = { ...noLabel, type: 'plastic', diameterIn: 3.5, framedIn: [7, 7] } as const
  expect(needs(take(item))).toEqual({ 'close-metal-flue-main-1': { 'gypsum-12': expect.closeTo(0.840278, 5), 'sealant-10oz': expect.closeTo(0.761598, 5), 'compatible-sealant-10oz': expect.closeTo(0.299079, 5) } })
  expect(cautions(take(item))).toMatch(/No foam on the vent and none over a joint/)
  // 2 in off: across 7.5, π · 7.5 · 20 ÷ 144 = 3.272492 ft² of metal
  expect(needs(take({ ...item, labelClearanceIn: 2 }))['shield-metal-flue-main-1']).toEqual({ 'galvanized-coil': expect.closeTo(3.272492, 5) })
})
test('a frame smaller than its vent is a finding', () => { expect(codes(take({ ...vent, framedIn: [3, 9] }))).toEqual(['flue-larger-than-frame']) })
test('no B-vent is listed for less than 1 in (from memory, high); other vents by their label', () => {
  const fault = (item: object) => metalFlue.check!({ item, at: '/openings/0' } as never).map(f => f.code)
  expect([fault({ ...vent, labelClearanceIn: 0 }), fault({ ...vent, labelClearanceIn: 0.75 }), fault({ ...vent, labelClearanceIn: 1 }), fault({ ...vent, type: 'plastic', labelClearanceIn: 0 })]).toEqual([['clearance-under-listing'], ['clearance-under-listing'], [], []])
})
