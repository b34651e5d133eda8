// Openings that few houses have, by hand: bead 1/4 in round is 0.0490874 in² · run ÷ 1.8046875 in³ a fluid ounce.
import { expect, test } from 'vitest'
import { cautions, codes, gates, hours, needs, take } from './take.ts'

const oz = (runIn: number, beadIn2 = 0.0490874) => expect.closeTo(runIn * beadIn2 / 1.8046875, 4)

test('wall cap: 14 ft of 3 1/2 in board, two edges, 0.15 h a foot', () => {
  const m = take({ kind: 'wall-cap', in: 'main', lengthFt: 14, widthIn: 3.5, at: 'hall' })
  // 168 · 3.5 ÷ 144 = 4.083 ft²; 336 in of edge.
  expect(needs(m)).toEqual({ 'cap-wall-main-1': { 'gypsum-12': expect.closeTo(4.0833, 4), 'sealant-10oz': oz(336) } })
  expect(hours(m)['cap-wall-main-1']).toBeCloseTo(2.1, 9)
})
test('skylight shaft: sealed at foot and corners, walls insulated and boarded; from R-13 on only sealed', () => {
  const m = take({ kind: 'skylight-shaft', in: 'main', sizeIn: [46, 24], heightIn: 40, wallR: 0, at: 'bath' })
  // 140 in round; corners 4 · 40 = 160; 140 · 40 ÷ 144 = 38.89 ft² of wall.
  expect(needs(m)).toEqual({ 'seal-skylight-shaft-main-1': { 'sealant-10oz': oz(300) }, 'insulate-skylight-shaft-main-1': { 'mineral-wool-r15': expect.closeTo(38.889, 3), 'gypsum-12': expect.closeTo(38.889, 3) } })
  expect(hours(m)).toEqual({ 'seal-skylight-shaft-main-1': expect.closeTo(140 / 12 * 0.05, 6), 'insulate-skylight-shaft-main-1': expect.closeTo(38.889 * 0.05, 3) })
  expect(take({ kind: 'skylight-shaft', in: 'main', sizeIn: [46, 24], heightIn: 40, wallR: 13, at: 'bath' }).tasks.map(t => t.phase)).toEqual(['seal'])
})
test.each(['whole-house-fan', 'cooler-opening'] as const)('%s: an insulated cover, 1.25 h, a curb for the fill', kind => {
  const m = take({ kind, in: 'main', sizeIn: [30, 30], at: 'hall' })
  expect(needs(m)).toEqual({ [`cover-${kind}-main-1`]: { 'seasonal-cover-r20': 1, 'sealant-10oz': oz(120) }, [`curb-${kind}-main-1`]: { 'dam-rigid': 10 } })
  expect(hours(m)).toEqual({ [`cover-${kind}-main-1`]: 1.25, [`curb-${kind}-main-1`]: 0.6 })
  expect(take({ kind, in: 'main', sizeIn: [30, 30], at: 'hall' }, false).tasks).toHaveLength(1)
})
test('a fan never runs under its cover', () => expect(cautions(take({ kind: 'whole-house-fan', in: 'main', sizeIn: [30, 30], at: 'hall' }))).toMatch(/under a cover it overheats/))
test('daylight tube: 10 in round are 31.416 in', () => expect(needs(take({ kind: 'solar-tube', in: 'main', count: 2, diameterIn: 10, at: 'hall' }))['seal-solar-tube-main-1']).toEqual({ 'sealant-10oz': oz(62.832) }))
test('an old opening is capped once it is proved dead, a flue in metal; else it stays open and stops the cover', () => {
  const old = { kind: 'abandoned-opening', in: 'main', sizeIn: [14, 8], was: 'register', proved: 'yes', at: 'bedroom' } as const
  // 18 · 12 ÷ 144 = 1.5 ft², 44 in round; 3/8 in bead is 0.1104466 in².
  expect(needs(take(old))).toEqual({ 'cap-abandoned-opening-main-1': { 'gypsum-12': 1.5, 'sealant-10oz': oz(44) } })
  expect(needs(take({ ...old, was: 'flue' }))).toEqual({ 'cap-abandoned-opening-main-1': { 'galvanized-coil': 1.5, 'noncombustible-sealant-10oz': oz(44, 0.1104466) } })
  for (const proved of ['no', 'unknown'] as const) {
    const m = take({ ...old, proved })
    expect([m.tasks, gates(m)]).toEqual([[], ['stop opening-not-proved']])
  }
})
test('planks get a sheet over all of them, 0.03 h a square foot', () => {
  const m = take({ kind: 'plank-ceiling', in: 'main', areaFt2: 180, edgeFt: 54, at: 'sun room' })
  expect(needs(m)).toEqual({ 'membrane-plank-ceiling-main-1': { 'air-barrier-sheet': 180, 'sealant-10oz': oz(648) } })
  expect(hours(m)['membrane-plank-ceiling-main-1']).toBeCloseTo(5.4, 9)
})
test('a fire separation takes its listed sealant, as wide as the gap, and a note', () => {
  const m = take({ kind: 'fire-gap', in: 'main', lengthFt: 28, gapIn: 0.375, ratedHours: 1, at: 'party wall' })
  expect(needs(m)).toEqual({ 'firestop-fire-gap-main-1': { 'fire-sealant-10oz': oz(336, 0.1104466) } })
  expect([gates(m), codes(m)]).toEqual([['note fire-separation'], []])
})
test('sprinkler heads are flagged and nothing is put round them', () => {
  const m = take({ kind: 'sprinkler-head', in: 'main', count: 6, at: 'rooms' })
  expect(needs(m)).toEqual({ 'flag-sprinkler-head-main-1': { 'box-flag': 6 } })
  expect(cautions(m)).toMatch(/no caulk, no foam/)
})
