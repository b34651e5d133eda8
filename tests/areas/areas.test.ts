// Each kind of area by hand arithmetic, with headroom and hatch that slow nothing, and the demo books.
import { describe, expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds, type Area } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

const floor = openFloor.sample
const board = { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' } as const
const house = (areas: readonly Area[], more: Partial<JobFile> = {}) => make({
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [...areas], eaves: [], appliances: [], openings: [], ...more,
}).json
const need = (e: ReturnType<typeof house>, item: string): number | undefined => e.materials.find(m => m.item === item)?.needed
const task = (e: ReturnType<typeof house>, id: string) => { const t = e.tasks.find(x => x.id === id); if (!t) throw new Error(`no ${id} among ${e.tasks.map(x => x.id).join(', ')}`); return t }

describe('open floor, batts laid over', () => {
  // Batts of 3.5 in, fair: R 11.2, 2 % gaps that stay: 1 ÷ (0.98 ÷ 12.87 + 0.02 ÷ 1.67) − 1.67 = 9.68. 49 − 9.68 = 39.3: 39, the R-38 batt is the thickest there is.
  const e = house([{ ...floor, cover: 'batts' }])
  test('gaps below stay gaps: existing R is less than the sum of its layers', () => expect(e.areas[0]!.existingR).toBeCloseTo(9.68, 2))
  test('by the square foot, 6 h for 1,000 ft², no machine, no bags', () => {
    expect(need(e, 'glass-r38')).toBe(1344)
    expect(task(e, 'lay-batts-main').personHours).toBe(8.06)
    expect(e.areas[0]).toMatchObject({ battR: 38, product: 'glass-r38' })
    expect(e.areas[0]).not.toHaveProperty('bags')
    expect(e.tasks.map(t => t.id)).not.toContain('set-machine')
  })
  test('left as it is', () => expect(house([{ ...floor, cover: 'none' }]).tasks).toEqual([]))
})

describe('decked floor', () => {
  const deck: Area = { kind: 'decked-floor', id: 'main', rectanglesFt: [[16, 12]], joists: { size: '2x8', spacingIn: 16 }, ceiling: board, roofPitch: 8, heelIn: 7.5, headroomIn: 80, existing: [], deck: 'nailed', way: 'lift' }
  test('lifted and laid back flat: the chart row that fits into 7 1/4 in, R-22, said beside the 49', () => {
    const e = house([deck])
    // 7.02 in blown for R-22 is the most listed under 7.25; interpolated: R 22 at 7.02, R 23 at 7.5.
    expect(e.areas[0]!.chartR).toBe(22)
    expect(e.findings.map(f => f.code)).toContain('deck-limits-fill')
    // 192 ft²: nailed 0.02 and back 0.01 h a square foot.
    expect([task(e, 'lift-deck-main').personHours, task(e, 'lay-deck-main').personHours]).toEqual([3.84, 1.92])
    const order = ['set-up', 'lift-deck-main', 'blow-main', 'lay-deck-main'].map(id => task(e, id).step)
    expect(order).toEqual([...order].sort((a, b) => a - b))
  })
  test('on risers of 9 in: R-49 stands 15.64 in and fits into 16 1/4', () => expect(house([{ ...deck, riserIn: 9 }]).areas[0]!.chartR).toBe(49))
  test('left off: no limit, nothing laid back', () => {
    const e = house([{ ...deck, leaveOff: 'yes' }])
    expect([e.areas[0]!.chartR, e.tasks.some(t => t.id === 'lay-deck-main')]).toEqual([49, false])
  })
  test('packed under the boards: by volume and density', () => {
    const e = house([{ ...deck, way: 'under' }])
    // 192 · (1 − 1.5/16) · 7.25 ÷ 12 = 105.125 ft³; · 3.5 ÷ 25 = 14.72 bags; R 7.25 · 3.7 = 26.8; 7.25 ÷ 12 · 3.5 = 2.115 psf.
    expect(e.areas[0]).toMatchObject({ bags: 14.72, packedR: 26.83, addedWeightPsf: 2.115 })
    // 14.72 · 0.2 = 2.94 h; 12 ft ÷ 16 in = 9 bays, holes 4 ft apart along 16 ft: 36 · 0.15 = 5.4 h.
    expect([task(e, 'pack-main').personHours, task(e, 'drill-main').personHours, need(e, 'hole-plug')]).toEqual([2.94, 5.4, 36])
    expect(e.findings.map(f => f.code)).toContain('cavity-limits-fill')
  })
})

describe('floor behind a knee wall', () => {
  const behind: Area = { kind: 'knee-wall-floor', id: 'main', rectanglesFt: [[22, 5]], joists: { size: '2x6', spacingIn: 16 }, ceiling: board, roofPitch: 12, heelIn: 5.5, headroomIn: 80, existing: [], wallFt: 22 }
  test('one block to a bay: 22 ft at 16 in are 17, 0.25 h each, before the blow', () => {
    const e = house([behind]), block = task(e, 'block-bays-main')
    expect([block.title.includes('(17)'), block.personHours, block.step < task(e, 'blow-main').step]).toEqual([true, 4.25, true])
    // 17 · 14.5 · 5.5 ÷ 144 = 9.41 ft² of board.
    expect(need(e, 'gypsum-12')).toBeCloseTo(9.41, 2)
  })
  test('counted bays win', () => expect(task(house([{ ...behind, openBays: 3 }]), 'block-bays-main').personHours).toBe(0.75))
})

describe('knee wall', () => {
  const wall: Area = { kind: 'knee-wall', id: 'knee', lengthFt: 22, heightFt: 4, studs: { size: '2x4', spacingIn: 16 }, headroomIn: 80, existing: [] }
  const e = house([wall])
  test('plates sealed, batts as the studs hold, board over them: 22 · 0.05, 88 ft² · 0.01, 88 · 0.04 h', () => {
    expect(['seal-knee-knee', 'batts-knee', 'back-knee'].map(id => task(e, id).personHours)).toEqual([1.1, 0.88, 3.52])
    expect([need(e, 'mineral-wool-r15'), e.areas[0]!.battR, e.areas[0]!.finalR]).toEqual([88, 15, 15])
  })
  test('sealed, filled, then shut by its board', () => {
    expect(task(e, 'seal-knee-knee').step).toBeLessThan(task(e, 'batts-knee').step)
    expect(task(e, 'batts-knee').step).toBeLessThan(task(e, 'back-knee').step)
  })
  test('2x6 studs take the thicker batt; a sound board stays', () => {
    const deep = house([{ ...wall, studs: { size: '2x6', spacingIn: 16 }, backed: 'yes', rValue: 20 }])
    expect([deep.areas[0]!.battR, deep.tasks.some(t => t.id === 'back-knee')]).toEqual([23, false])
  })
  test('where its filling is stopped, the board goes too', () => {
    const wet = house([wall, floor], { hazards: [{ kind: 'wet-wood', in: 'knee', at: 'wall', cause: 'roof' }], notFound: [] })
    expect(wet.tasks.map(t => t.id).filter(id => /knee/.test(id))).toEqual([])
  })
})

describe('slope', () => {
  const slope: Area = { kind: 'slope', id: 'east', widthFt: 22, runFt: 6, rafters: { size: '2x6', spacingIn: 16 }, ceiling: board, chute: 'yes', wetRoomBelow: 'no', headroomIn: 80, existing: [] }
  test('as deep as the rafters less the chute: 4 1/2 in, R 16.65, 6.28 bags, 1.31 psf', () => {
    const e = house([slope])
    // 132 ft² · 0.90625 · 4.5 ÷ 12 = 44.86 ft³ · 3.5 ÷ 25 = 6.28; 4.5 · 3.7 = 16.65; 4.5 ÷ 12 · 3.5 = 1.3125.
    expect(e.areas[0]).toMatchObject({ bags: 6.28, packedR: 16.65, addedWeightPsf: 1.313, finalR: 16.65 })
    expect(e.findings.map(f => f.code)).toContain('cavity-limits-fill')
    // 17 bays, plugged twice: 34 · 0.1 = 3.4 h, before they are packed.
    expect([task(e, 'plug-slope-east').personHours, task(e, 'plug-slope-east').step < task(e, 'pack-east').step]).toEqual([3.4, true])
  })
  test('full without a chute: a note; over a wet room a stop', () => {
    expect(house([{ ...slope, chute: 'no' }]).gates.map(g => [g.code, g.state])).toEqual([['slope-unvented', 'note']])
    const wet = house([{ ...slope, chute: 'no', wetRoomBelow: 'yes' }, floor])
    expect(wet.gates.map(g => [g.code, g.state])).toEqual([['slope-wet-room', 'stop']])
    expect(wet.tasks.map(t => t.id)).not.toContain('pack-east')
  })
  test('weight of packed fill is held against the board', () => expect(house([{ ...slope, chute: 'no', rafters: { size: '2x8', spacingIn: 24 } }]).gates.map(g => g.code)).toContain('ceiling-over-limit'))
})

describe('left out, and as it is', () => {
  test.each(['garage', 'porch', 'closed-vault'] as const)('%s: the line is closed and dammed, nothing is blown on it', kind => {
    const e = house([floor, { kind, id: 'out', rectanglesFt: [[20, 22]], beside: 'main', lineFt: 22, joistIn: 5.5, headroomIn: 62 }])
    // 22 · 0.15 and 22 · 0.06 h; 264 · 5.5 ÷ 144 = 10.08 ft² of board.
    expect(['close-line-out', 'dam-line-out'].map(id => task(e, id).personHours)).toEqual([3.3, 1.32])
    expect(need(e, 'gypsum-12')).toBeCloseTo(10.08, 2)
    expect(task(e, 'close-line-out').step).toBeLessThan(task(e, 'blow-main').step)
    expect(e.areas[1]).toEqual({ id: 'out', kind, areaFt2: 440, netAreaFt2: 0, stoppedBy: [] })
  })
  test('a platform is dammed all round and its own R counts', () => {
    const e = house([floor, { kind: 'platform', id: 'boards', rectanglesFt: [[8, 8]], beside: 'main', joists: { size: '2x6', spacingIn: 16 }, headroomIn: 70, existing: [] }])
    expect(task(e, 'dam-platform-boards').personHours).toBe(1.92)
    expect(e.areas[1]!.averageR).toBeLessThan(2)
    expect(e.findings.map(f => f.code)).toContain('platform-stays-bare')
  })
  test('sealing the line is stopped: the floor beside is not blown', () => {
    const e = house([floor, { kind: 'garage', id: 'out', rectanglesFt: [[20, 22]], beside: 'main', lineFt: 22, joistIn: 5.5, headroomIn: 62 }], { hazards: [{ kind: 'animals', in: 'out', at: 'nest', what: 'animals' }], notFound: [] })
    expect(e.tasks.map(t => t.id)).not.toContain('blow-main')
  })
})

test('several areas in one house, each with its own framing, goal and product', () => {
  const e = house([floor, { ...floor, id: 'wing', joists: { size: '2x4', spacingIn: 24 }, rValue: 30, existing: [] }], { choices: { fill: { wing: 'demo-loose-fiberglass' } } })
  expect(e.areas.map(a => [a.product, a.targetR])).toEqual([['demo-loose-cellulose', 49], ['demo-loose-fiberglass', 30]])
})
