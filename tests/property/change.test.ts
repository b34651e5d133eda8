// One thing of a house is changed: what must not get better, less or dearer by it, and what must not change at all.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { takeoff } from '../../src/estimate/tasks/takeoff.ts'
import type { JobFile } from '../../src/job/job-file.ts'
import { booksFor, fewer, jobFile, make, onHouses, run, VERDICTS } from './job.ts'

const worse = (v: string): number => VERDICTS.indexOf(v as never)

test('with any one paper taken away the verdict is never better', () => {
  onHouses(({ data, json }) => {
    data.clearances?.forEach((_, i) => {
      const less = make({ ...data, clearances: data.clearances!.filter((_, n) => n !== i) })
      // A stop may take away the very work that a hold is about: then the rest may be scheduled.
      const heldGone = json.verdict === 'hold' && less.json.verdict === 'conditional' && less.json.stopped.length > json.stopped.length
      if (!heldGone) expect(worse(less.json.verdict), `${json.verdict} with ${data.clearances![i]!.gate}, ${less.json.verdict} without`).toBeGreaterThanOrEqual(worse(json.verdict))
      if (less.json.verdict === 'stop') expect(less.json.price.totalCents).toBeUndefined()
    })
  })
})

test('a paper for every gate that takes one leaves no stop and no hold but those that only the file can close', () => {
  let cleared = 0
  onHouses(({ data, json, made }) => {
    if (json.gates.some(g => g.open && made.out.gates.find(x => x.id === g.id)!.clearable?.length)) return
    const open = json.gates.filter(g => g.open && g.state !== 'note' && g.state !== 'mend').map(g => g.code)
    for (const code of open) expect(['appliances-not-listed', 'chimney-model-unknown', 'combustion-air-unclear', 'opening-not-proved', 'single-wall-through-ceiling', 'transite-vent']).toContain(code)
    if (open.length === 0) expect(json.gates.every(g => !g.open || g.state === 'note' || g.state === 'mend')).toBe(true)
    if (open.length === 0 && !data.openings.some(o => o.decline)) { cleared++; expect(['go', 'conditional']).toContain(json.verdict) }
  })
  expect(cleared).toBeGreaterThan(30)
})

describe('quantities', () => {
  const bagsOf = (data: JobFile): Map<string, number> => new Map(takeoff(data, booksFor(data)).areas.map(a => [a.id, (a.measure.figures.bags as { value: number } | undefined)?.value ?? 0]))

  test('a larger rectangle never needs fewer bags', () => {
    fc.assert(fc.property(jobFile, fc.nat(2), fc.nat(2), fc.nat(1), fc.constantFrom(0.25, 1, 7), (data, a, r, side, more) => {
      const floors = data.areas.filter(x => x.kind === 'open-floor'), area = floors[a % floors.length]!, n = r % area.rectanglesFt.length
      const larger = { ...area, rectanglesFt: area.rectanglesFt.map((s, i) => (i === n ? (side === 0 ? [s[0] + more, s[1]] as const : [s[0], s[1] + more] as const) : s)) }
      const before = bagsOf(data), after = bagsOf({ ...data, areas: data.areas.map(x => (x === area ? larger : x)) })
      for (const [id, bags] of before) if (after.has(id)) expect(after.get(id)!, id).toBeGreaterThanOrEqual(bags) // else larger than a formula takes
    }), run)
  })

  test('more existing R never gives a higher row of the chart', () => {
    fc.assert(fc.property(jobFile, fc.constantFrom(0.25, 1, 2.75), (data, more) => {
      const rows = (d: JobFile) => new Map(takeoff(d, booksFor(d)).areas.map(a => {
        const answer = a.measure.chart?.answer
        return [a.id, { r: (a.measure.figures.existingR as { value: number } | undefined)?.value ?? 0, row: answer === undefined || answer.is === 'leave' ? 0 : answer.is === 'beyond' ? Infinity : answer.row.chartR }]
      }))
      const deeper = data.areas.map(a => (a.kind !== 'open-floor' ? a : { ...a, existing: a.existing.map(l => ({ ...l, depthIn: l.depthIn.map(d => d + more) })) }))
      const before = rows(data), after = rows({ ...data, areas: deeper })
      for (const [id, { r, row }] of before) {
        const then = after.get(id)
        if (!then) continue // deeper than a formula takes
        expect(then.r, id).toBeGreaterThanOrEqual(r - 1e-9)
        expect(then.row, id).toBeLessThanOrEqual(row)
      }
    }), run)
  })

  test('what is blown reaches the target, and the next row down would not', () => {
    onHouses(({ data }) => {
      for (const a of takeoff(data, booksFor(data)).areas) {
        const answer = a.measure.chart?.answer
        if (answer?.is !== 'row' || data.areas.some(x => x.id === a.id && x.kind === 'decked-floor')) continue // boards may leave less room
        expect(answer.row.chartR, a.id).toBeGreaterThanOrEqual(a.measure.need.value)
        if (answer.below) expect(answer.below.chartR, a.id).toBeLessThan(a.measure.need.value)
      }
    })
  })
})

describe('prices', () => {
  const items = [...demoPrices.products.map(p => p.item), ...demoPrices.blown.map(p => p.item)]
  const dearer = (item: string, by: number) => shelf({ ...demoPrices, products: demoPrices.products.map(p => (p.item === item ? { ...p, price: Math.round(p.price * by * 100) / 100 } : p)), blown: demoPrices.blown.map(p => (p.item === item ? { ...p, price: Math.round(p.price * by * 100) / 100 } : p)) }, demoCompany)
  test('a dearer product never lowers the price', () => {
    fc.assert(fc.property(jobFile, fc.constantFrom(...items), fc.constantFrom(1.01, 1.3, 4), (data, item, by) => {
      const now = make(data).json.price, then = make(data, dearer(item, by)).json.price
      if (now.totalCents === undefined) { expect(then.totalCents).toBeUndefined(); return }
      expect(then.totalCents!).toBeGreaterThanOrEqual(now.totalCents)
      expect(then.materialsCents!).toBeGreaterThanOrEqual(now.materialsCents!)
      expect(then.laborCents).toBe(now.laborCents)
    }), fewer)
  })

  test('a higher margin never lowers the price', () => {
    fc.assert(fc.property(jobFile, fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 30 }), (data, marginPct, more) => {
      const at = (pct: number) => make({ ...data, choices: { ...data.choices, marginPct: pct } }).json.price
      const now = at(marginPct), then = at(marginPct + more)
      if (now.totalCents !== undefined) expect(then.totalCents!).toBeGreaterThanOrEqual(now.totalCents)
      expect(then.directCents).toBe(now.directCents)
    }), fewer)
  })
})

/** Keys in another order, values the same. */
const keysTurned = (v: unknown): unknown => Array.isArray(v) ? v.map(keysTurned)
  : typeof v === 'object' && v !== null ? Object.fromEntries(Object.entries(v).reverse().map(([k, x]) => [k, keysTurned(x)])) : v

describe('order that says nothing', () => {
  test('of keys: the whole output is the same', () => {
    fc.assert(fc.property(jobFile, data => { expect(make(keysTurned(data) as JobFile).json).toEqual(make(data).json) }), fewer)
  })

  test('of openings, appliances, eaves and papers: price and hours are the same', () => {
    fc.assert(fc.property(jobFile.chain(data => fc.record({
      data: fc.constant(data), openings: fc.shuffledSubarray(data.openings, { minLength: data.openings.length }),
      appliances: fc.shuffledSubarray(data.appliances ?? [], { minLength: data.appliances?.length ?? 0 }), eaves: fc.shuffledSubarray(data.eaves ?? [], { minLength: data.eaves?.length ?? 0 }),
      clearances: fc.shuffledSubarray(data.clearances ?? [], { minLength: data.clearances?.length ?? 0 }),
    })), ({ data, openings, appliances, eaves, clearances }) => {
      const other = make({ ...data, openings, ...(data.appliances ? { appliances } : {}), ...(data.eaves ? { eaves } : {}), ...(data.clearances ? { clearances } : {}) }).json, json = make(data).json
      const { excludes: _, ...price } = json.price, { excludes: __, ...then } = other.price
      expect(then).toEqual(price)
      expect(other.labor).toEqual(json.labor)
      expect(other.verdict).toBe(json.verdict)
      expect(other.materials.map(m => [m.item, m.charged, m.totalCents])).toEqual(json.materials.map(m => [m.item, m.charged, m.totalCents]))
    }), fewer)
  })
})
