// Net free area against the code, one baffle to an open bay, facings, and the strip at the eaves: by hand.
import { describe, expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

// 50 × 30 ft = 1,500 ft²: 1,440 in² at 1/150, 720 at 1/300; of that 288 high and 360 low.
const floor = { ...openFloor.sample, rectanglesFt: [[50, 30]] as [number, number][] }
const batt = floor.existing[0]!
const house = (more: Partial<JobFile> = {}): JobFile => ({
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', climateZone: '5', yearBuilt: 2004 }, target: { code: 'iecc-2018' },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [floor], eaves: eaves(9), highVents: [], appliances: [], openings: [], ...more,
})
const eaves = (netFreeIn2PerFt: number): NonNullable<JobFile['eaves']> => ['front', 'back'].map(at => ({ in: 'main', at, lengthFt: 50, ventedBays: 30, netFreeIn2PerFt }))
const ridge = (lengthFt: number) => ({ kind: 'ridge' as const, lengthFt, netFreeIn2PerFt: 18 })
const vents = (more: Partial<JobFile>) => { const { json } = make(house(more)); return { ...json, short: json.gates.some(g => g.code === 'attic-vents-short'), codes: json.findings.map(f => f.code) } }

describe('net free area (IRC R806.2)', () => {
  test('balanced: 900 low, 540 high; 1/300 is enough', () => {
    const e = vents({ highVents: [ridge(30)] })
    expect(e.atticVents).toEqual({ netFreeIn2: 1440, lowIn2: 900, highIn2: 540, neededIn2: 720, ratio: 150 })
    expect([e.short, e.offers]).toEqual([false, []])
    expect(e.eaves!.sides.map(s => s.netFreeIn2)).toEqual([450, 450])
  })
  test('no high vents: 1/150, a note, and both kinds offered so that half is at the eaves', () => {
    const e = vents({})
    expect(e.atticVents).toMatchObject({ netFreeIn2: 900, neededIn2: 1440, ratio: 240 })
    expect([e.short, e.verdict]).toEqual([true, 'go'])
    // Half is 720: the eaves have 900; high 720 ÷ 50 = 14.4, up to 15 vents at $210: ÷ 0.6 = $5,250.
    expect(e.offers).toEqual([{ id: 'attic-vents', what: '15 roof vents, to reach 1440 in² of net free area; to be decided before the blow, and with a baffle in each bay that they open', priceCents: 525000 }])
  })
  test('poor eaves are asked for first, never high vents alone', () => {
    const e = vents({ eaves: eaves(4), highVents: [ridge(10)] })
    // 400 low, 180 high of 1,440: 320 ÷ 60 = 5.3, 6 soffit vents; 540 ÷ 50 = 10.8, 11 roof vents.
    expect(e.offers[0]!.what).toBe('6 soffit vents and 11 roof vents, to reach 1440 in² of net free area; to be decided before the blow, and with a baffle in each bay that they open')
    // 6 · 9.00 = 54.00, tax 3.78, 3.00 h · 48 = 144.00, roofer 2,310.00, contingency 7 % of 198.00 = 13.86: 2,525.64 ÷ 0.6 = 4,209.40, to the dollar 4,210.
    expect(e.offers[0]!.priceCents).toBe(421000)
  })
  test('in zones 6 to 8 the easing asks for a vapor retarder as well, from 2015 on; in 2012 one of the two was enough', () => {
    const cold = { state: 'WI', climateZone: '6', yearBuilt: 2004 } as const
    expect(vents({ house: cold, highVents: [ridge(30)] }).atticVents!.neededIn2).toBe(1440)
    expect(vents({ house: cold, highVents: [ridge(30)], areas: [{ ...floor, existing: [{ ...batt, facing: 'kraft-down' }] }] }).atticVents!.neededIn2).toBe(720)
    expect(vents({ house: cold, highVents: [ridge(30)], target: { code: 'iecc-2012' } }).atticVents!.neededIn2).toBe(720)
  })
  test('half a survey says what is missing and guesses nothing; no survey says nothing', () => {
    const { highVents: _, ...half } = house(), e = make(half).json
    expect([e.atticVents, e.findings.filter(f => f.code === 'vents-half-surveyed').length]).toEqual([undefined, 1])
    const bare = { ...half, eaves: half.eaves!.map(({ netFreeIn2PerFt: __, ...eave }) => eave) }
    expect(make(bare).json.findings.map(f => f.code)).not.toContain('vents-half-surveyed')
  })
  test('ridge and gable together draw from each other', () => expect(vents({ highVents: [ridge(30), { kind: 'gable', count: 2, netFreeIn2: 120 }] }).codes).toContain('vents-mixed'))
})

describe('bays', () => {
  test('one open bay, one baffle, one wind block (common practice, no source)', () => {
    const one = make(house({ eaves: [{ in: 'main', at: 'front', lengthFt: 2, bays: 1, ventedBays: 1 }], areas: [{ ...floor, heelIn: 12 }] })).json
    expect([one.eaves!.baffles, one.eaves!.windBlocks]).toEqual([1, 1])
  })
  test('a solid bay that opens into the soffit gets a stop and no baffle', () => {
    const e = make(house({ eaves: [{ in: 'main', at: 'front', lengthFt: 50, ventedBays: 10, openSolidBays: 7 }], areas: [{ ...floor, heelIn: 12 }] })).json
    expect([e.eaves!.baffles, e.eaves!.windBlocks]).toEqual([10, 17])
  })
})

describe('facings', () => {
  const faced = (facing: 'none' | 'kraft-down' | 'kraft-up' | 'poly' | 'foil', more: Partial<JobFile> = {}) => make(house({ areas: [{ ...floor, existing: [{ ...batt, facing }] }], ...more })).json
  test('up or between layers under new fill: slashed by the crew before it is covered, 2 h for 1,000 ft²', () => {
    for (const facing of ['kraft-up', 'poly', 'foil'] as const) {
      const e = faced(facing)
      expect(e.gates.map(g => [g.code, g.state, g.clearedByTask])).toContainEqual(['facing-up', 'mend', 'slash-facing-main-1'])
      const slash = e.tasks.find(t => t.id === 'slash-facing-main-1')!
      expect([slash.phase, slash.personHours]).toEqual(['prepare', 3])
      expect(slash.step).toBeLessThan(e.tasks.find(t => t.id === 'blow-main')!.step)
      expect(e.verdict).toBe('go')
    }
  })
  test('down, or none: nothing', () => { for (const facing of ['none', 'kraft-down'] as const) expect(faced(facing).gates.filter(g => g.code === 'facing-up')).toEqual([]) })
  test('paper left in the open where nothing is blown', () => expect(faced('kraft-up', { target: { rValue: 11 } }).findings.map(f => f.code)).toContain('facing-exposed'))
})

test('a low heel is told with the choices: under a third of the full depth at the wall', () => {
  const at = (heelIn: number) => make(house({ areas: [{ ...floor, heelIn }] })).json.findings.filter(f => f.code === 'low-heel').length
  // 3 1/2 in: 4.29 of 14.06 in, 0.31; 5 1/2 in: 6.29, 0.45.
  expect([at(3.5), at(5.5)]).toEqual([1, 0])
})

test('the strip at the eaves is a part of its own: width, fill at the wall, and its R below that of the middle', () => {
  const { edgeStrip: s, edgeStripFt, averageR } = make(house()).json.areas[0]!
  // Heel 5 1/2, gap 1 · 13/12 = 1.083, wall 4 1/2 in at 5/12: 5.5 − 1.0833 + 4.5 · 5/12 = 6.29 in at the wall.
  expect(s!.wallDepthIn).toBe(6.29)
  expect(s!.widthFt).toBe(edgeStripFt)
  expect(s!.areaFt2).toBeCloseTo(2 * 50 * s!.widthFt, 0)
  expect(s!.averageR).toBeLessThan(averageR!)
})

describe('the step says how many bays, and of what', () => {
  const titleOf = (more: Partial<JobFile>) => make(house(more)).json.tasks.find(t => t.id === 'baffles-main')!.title
  const side = (change: object) => [{ in: 'main', at: 'front', lengthFt: 50, ventedBays: 30, ...change }]
  test('vented bays, and solid ones that open into the soffit', () => {
    expect(titleOf({ eaves: side({ goodBaffles: 12 }) })).toBe('Fasten a baffle and a wind block in each vented bay that lacks them (18)')
    expect(titleOf({ eaves: side({ openSolidBays: 6 }) })).toBe('Fasten a wind block in each of 6 open solid bays; a baffle and a wind block in each vented bay that lacks them (30)')
  })
  test('a low heel takes two lengths to a bay, and a note where the second is for a hand’s breadth', () => {
    const made = (heelIn: number) => { const e = make(house({ areas: [{ ...floor, roofPitch: 3, rValue: 60, heelIn }], eaves: side({}) })).json; return [e.tasks.find(t => t.id === 'baffles-main')!.title.startsWith('Fasten 2 lengths'), e.findings.some(f => f.code === 'baffle-just-short')] }
    const all = Array.from({ length: 40 }, (_, i) => made(3 + i / 4))
    expect(all.some(([two, near]) => two && near)).toBe(true)
    expect(all.some(([two, near]) => two && !near)).toBe(true)
    expect(all.some(([two, near]) => !two && near)).toBe(false)
  })
})
