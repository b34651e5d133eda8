// A house under a slope: what is seen in one part, and what it means for the parts beside it.
import { describe, expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

const floor = { joists: { size: '2x6', spacingIn: 16 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 12, heelIn: 5.5, headroomIn: 44, existing: [] } as const
const cape = (hazards: JobFile['hazards'] = [], more: Partial<JobFile> = {}): JobFile => ({
  format: 'lidwork-job/1', job: { id: 'cape', title: 'A house under a slope', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'VT', yearBuilt: 1942 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]).filter(k => !hazards.some(h => h.kind === k)), hazards, appliances: [], eaves: [],
  areas: [
    { kind: 'open-floor', id: 'top', rectanglesFt: [[30, 10]], ...floor },
    { kind: 'slope', id: 'slope', widthFt: 30, runFt: 6, rafters: { size: '2x6', spacingIn: 16 }, ceiling: floor.ceiling, chute: 'yes', headroomIn: 44, existing: [] },
    { kind: 'knee-wall-floor', id: 'crawl', rectanglesFt: [[30, 5]], ...floor, wallFt: 30 },
    { kind: 'decked-floor', id: 'boards', rectanglesFt: [[12, 5]], ...floor, deck: 'nailed', way: 'under', wallFt: 12 },
    { kind: 'knee-wall', id: 'wall', lengthFt: 30, heightFt: 4, studs: { size: '2x4', spacingIn: 16 }, headroomIn: 44, beside: 'crawl', existing: [] },
  ] as JobFile['areas'],
  openings: [{ kind: 'hatch', in: 'top', sizeIn: [22, 30], panelR: 0, gasket: 'no', latch: 'no', at: 'hall' }], ...more,
})
const wiring = { kind: 'knob-and-tube', in: 'crawl', at: 'east end', state: 'unknown' } as const
const of = (data: JobFile) => make(data).json

describe('knob-and-tube seen in one part', () => {
  test('closed bays elsewhere wait for an electrician; open floors elsewhere do not', () => {
    const e = of(cape([wiring]))
    expect(e.gates.filter(g => g.code === 'wiring-not-traced').map(g => [g.state, g.where])).toEqual([['hold', 'slope'], ['hold', 'boards']])
    expect(e.verdict).toBe('hold')
  })
  test('seen in the whole attic, it shuts all by itself; where it was looked for and not found, nothing waits', () => {
    const { in: _, ...everywhere } = wiring
    expect(of(cape([everywhere])).gates.some(g => g.code === 'wiring-not-traced')).toBe(false)
    expect(of(cape()).gates.some(g => g.code === 'wiring-not-traced')).toBe(false)
  })
  test('the electrician’s letter opens it, for that part', () => {
    const letter = { gate: 'wiring-not-traced', in: 'slope', kind: 'electrician-letter', by: 'Invented Electric LLC', license: 'VT-0000', on: '2026-03-05', paper: 'letters/slope.pdf' }
    expect(of(cape([wiring], { clearances: [letter] })).gates.filter(g => g.code === 'wiring-not-traced' && g.open).map(g => g.where)).toEqual(['boards'])
  })
})

test('sealing near open wiring is cautioned, and stays in its opening’s hours, materials and leakage', () => {
  const e = of(cape([{ ...wiring, in: 'top' }])), hatch = e.sealing.find(s => s.kind === 'hatch')!
  expect(e.tasks.find(t => t.id === 'fit-hatch-top-1')!.cautions[0]).toContain('Old open wiring')
  expect(hatch.personHours).toBeGreaterThan(0)
  expect(hatch.materials.length).toBeGreaterThan(0)
  expect(hatch.leakageAreaIn2After!).toBeLessThan(hatch.leakageAreaIn2Before!)
})

describe('what shuts a floor shuts the wall that stands on it', () => {
  test('droppings in the crawl: nothing is done to its wall either', () => {
    const e = of(cape([{ kind: 'animals', in: 'crawl', at: 'corner', what: 'droppings' }]))
    expect(e.tasks.filter(t => t.areas.includes('wall') && t.areas.length === 1).map(t => t.id)).toEqual([])
    expect(e.stopped.map(s => s.id)).toEqual(expect.arrayContaining(['seal-knee-wall', 'batts-wall', 'back-wall']))
  })
  test('a few, old and dry: a note, and how they are wiped up', () => {
    const e = of(cape([{ kind: 'animals', in: 'crawl', at: 'corner', what: 'droppings', extent: 'few' }]))
    expect(e.gates.filter(g => g.code.startsWith('animals')).map(g => [g.code, g.state])).toEqual([['animals-few', 'note']])
    expect(e.tasks.some(t => t.id === 'batts-wall')).toBe(true)
  })
  test('a few of what lives there are no few: the word is for droppings alone', () => {
    expect(of(cape([{ kind: 'animals', in: 'crawl', at: 'corner', what: 'bats', extent: 'few' }])).gates.some(g => g.code === 'animals')).toBe(true)
  })
})

describe('the order under a slope', () => {
  const e = of(cape()), step = (id: string) => { const t = e.tasks.find(x => x.id === id); if (!t) throw new Error(`no ${id} in ${e.tasks.map(x => x.id).join(', ')}`); return t.step }
  test('batts, their board, then the floor at the foot of the wall', () => expect([step('batts-wall') < step('back-wall'), step('back-wall') < step('blow-crawl')]).toEqual([true, true]))
  test('slopes and closed floors are packed before any open floor is blown', () => {
    for (const pack of ['pack-slope', 'pack-boards']) for (const blow of ['blow-top', 'blow-crawl']) expect(step(pack)).toBeLessThan(step(blow))
    expect(e.tasks.find(t => t.id === 'blow-top')!.after).toContain('pack-slope')
  })
  test('the area with the way out is blown last, and the way out is shut when all are done', () => {
    expect(step('blow-crawl')).toBeLessThan(step('blow-top'))
    expect(Math.max(...e.tasks.filter(t => t.phase === 'insulate').map(t => t.step))).toBeLessThan(step('shut-hatch-top-1'))
  })
  test('a floor is leveled when it is blown, not after the next one', () => expect(step('level-crawl')).toBe(step('blow-crawl') + 1))
  test('a boarded floor behind a knee wall gets its blocks: 12 ft at 16 in are 9 bays', () => expect(e.tasks.find(t => t.id === 'block-bays-boards')!.title).toMatch(/\(9\)$/))
})
