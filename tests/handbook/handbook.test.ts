// Every formula of the core against figures from outside it, and a table of what each one rests on.
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, describe, expect, test } from 'vitest'
import { chartFormulas } from '../../src/books/chart.ts'
import { OutOfRange, RESULT, given, total, work, type Formula, type Unit } from '../../src/units/quantity.ts'
import { obtained, type Case } from './case.ts'
import { unpublished } from './unpublished.ts'

const isFormula = (v: unknown): v is Formula => typeof v === 'object' && v !== null && 'says' in v && 'fn' in v && 'args' in v
const modules = async (folder: string): Promise<Record<string, unknown>[]> =>
  Promise.all(readdirSync(folder).filter(f => f.endsWith('.ts')).sort().map(f => import(join(folder, f)) as Promise<Record<string, unknown>>))

const summed = total('each', [given(1, 'each', '')]).from
const formulas: Formula[] = [
  ...(await modules(join(import.meta.dirname, '../../src/calc'))).flatMap(m => Object.values(m).filter(isFormula)),
  ...Object.values(chartFormulas), ...(summed.is === 'worked' ? [summed.by] : []),
]
const byId = new Map(formulas.map(f => [f.id, f]))
const cases = (await modules(join(import.meta.dirname, 'cases'))).flatMap(m => m.default as Case[])

/** The list formulas name no arguments: their inputs are the list. */
const apply = (f: Formula, inputs: Case['inputs']): number => Object.keys(f.args).length === 0 ? f.fn(inputs)
  : work(f, Object.fromEntries(Object.entries(inputs).map(([name, x]) => [name, given(x, unitOf(f, name), `/handbook/${name}`)])) as never).value
const unitOf = (f: Formula, name: string): Unit => { const unit = f.args[name]?.[0] as Unit | 'any'; return unit === 'any' ? 'each' : unit }

describe('published and independent cases', () => {
  test.each(cases.map(c => [`${c.formula}: ${c.id}`, c] as const))('%s', (_, c) => {
    const f = byId.get(c.formula)
    expect(f, `no formula ${c.formula}`).toBeDefined()
    if (Object.keys(f!.args).length > 0) expect(Object.keys(c.inputs).sort()).toEqual(Object.keys(f!.args).sort())
    const made = apply(f!, c.inputs)
    expect(Math.abs(made - c.expected), `${made}, and ${c.source} has ${c.expected} ± ${c.tolerance} (${c.toleranceWhy})`).toBeLessThanOrEqual(c.tolerance)
  })
})

describe('the case data', () => {
  test('names a source, how it was obtained, and why the tolerance', () => {
    for (const c of cases) {
      expect(obtained, c.id).toContain(c.obtained)
      for (const text of [c.id, c.source, c.toleranceWhy]) expect(text, JSON.stringify(c)).toMatch(/\S{3}|\d/)
      expect(Number.isFinite(c.expected) && c.tolerance >= 0, c.id).toBe(true)
      // A tolerance that lets half of the figure go proves nothing.
      if (c.expected !== 0) expect(c.tolerance / Math.abs(c.expected), `${c.formula}: ${c.id}`).toBeLessThan(0.06)
    }
  })
  test('writes hand arithmetic out', () => {
    for (const c of cases.filter(x => x.obtained === 'hand arithmetic')) expect(c.note ?? '', `${c.formula}: ${c.id}`).toMatch(/=|at most|not below/)
  })
  test('holds no case twice', () => {
    const ids = cases.map(c => `${c.formula}: ${c.id} ${JSON.stringify(c.inputs)}`)
    expect(new Set(ids).size).toBe(ids.length)
  })
  test('formula ids are one each', () => expect(byId.size).toBe(formulas.length))
})

describe('the cases can tell a wrong formula from a right one', () => {
  const misses = (c: Case, made: number): boolean => Math.abs(made - c.expected) > c.tolerance
  const tried = (f: Formula, c: Case, inputs: Case['inputs']): boolean => {
    try { return misses(c, apply(f, inputs)) } catch (e) { if (e instanceof OutOfRange) return false; throw e }
  }
  test.each(formulas.map(f => [f.id] as const))('%s: 3 %% off is seen, and every input counts', id => {
    const f = byId.get(id)!
    const own = cases.filter(c => c.formula === id)
    expect(own.some(c => misses(c, apply(f, c.inputs) * 1.03 + (c.expected === 0 ? 1 : 0)))).toBe(true)
    for (const name of new Set(own.flatMap(c => Object.keys(c.inputs)))) {
      const counts = own.some(c => [1.1, 0.9].some(by => tried(f, c, { ...c.inputs, [name]: c.inputs[name]! * by })) || tried(f, c, { ...c.inputs, [name]: c.inputs[name]! + 1 }))
      expect(counts, `no case of ${id} feels ${name}`).toBe(true)
    }
  })
})

const published = (c: Case): boolean => c.obtained.startsWith('published')

/** Of one table at most five cases count. */
const counted = (() => {
  const seen = new Map<string, number>()
  return cases.filter(c => {
    if (c.table === undefined || c.obtained === 'hand arithmetic') return true
    const n = (seen.get(c.table) ?? 0) + 1
    seen.set(c.table, n)
    return n <= 5
  })
})()

describe('every formula has a published case, or says that none was found and what was done instead', () => {
  test.each(formulas.map(f => [f.id] as const))('%s', id => {
    const own = counted.filter(c => c.formula === id)
    expect(own.length, `${id} has no case that counts`).toBeGreaterThan(0)
    if (own.some(published)) expect(unpublished[id], `${id} has a published case: its line in unpublished.ts is stale`).toBeUndefined()
    else expect(unpublished[id], `${id} has no published case; say so in unpublished.ts, with the other check`).toMatch(/^no published case (found|seen)/)
  })
  test('says it of no formula that is gone', () => expect(Object.keys(unpublished).filter(id => !byId.has(id))).toEqual([]))
})

describe('a formula refuses what is outside its range, and takes what is in it', () => {
  const ranged = formulas.filter(f => Object.keys(f.args).length > 0)
  const argsOf = (f: Formula): [string, readonly [string, number, number]][] => Object.entries(f.args) as never
  test.each(ranged.map(f => [f.id] as const))('%s: any figure outside, just outside, NaN or endless', id => {
    const f = byId.get(id)!, valid = cases.find(c => c.formula === id)!
    for (const [name, [, min, max]] of argsOf(f)) {
      const near = (x: number): number => Math.max(1e-12, Math.abs(x) * 1e-12)
      const refuses = (x: number): void => {
        try { apply(f, { ...valid.inputs, [name]: x }) } catch (e) { if (e instanceof OutOfRange && e.arg === name) return; throw e }
        throw new Error(`${id} takes ${name} = ${x}, and its range is ${min} to ${max}`)
      }
      for (const outside of [NaN, Infinity, -Infinity, min - near(min), max + near(max), min - 1, max * 2 + 1]) refuses(outside)
      fc.assert(fc.property(fc.oneof(fc.double({ max: min, maxExcluded: true, noNaN: true }), fc.double({ min: max, minExcluded: true, noNaN: true })).filter(x => x < min || x > max), refuses), { numRuns: 20, seed: 17 })
    }
  })
  /** Two inputs that leave nothing together: each is good by itself. Who keeps them apart. */
  const TOGETHER: Readonly<Record<string, string>> = {
    'ceiling-share-after': 'a cut of the whole leakage: capped by cut-cap', 'in-proportion': 'a part greater than the whole by hundreds of digits: parts make up the whole', 'between-rows': 'two rows of one R: a chart rises (chartFaults)', days: 'a day as long as its set-up: refused by the check of the company file',
  }
  test.each(ranged.map(f => [f.id] as const))('%s: within its range a figure comes out, or it says that none does', id => {
    const f = byId.get(id)!
    const within = fc.record(Object.fromEntries(argsOf(f).map(([name, [, min, max]]) => [name, fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true }), fc.double({ min, max: Math.min(max, min + 100), noNaN: true }))])))
    let none = 0
    fc.assert(fc.property(within, x => {
      try { expect(Number.isFinite(apply(f, x))).toBe(true) } catch (e) { if (e instanceof OutOfRange && e.arg === RESULT) none++; else throw e }
    }), { numRuns: 100, seed: 18 })
    if (none > 0) expect(TOGETHER[id], `${id}: some inputs within its range leave no figure`).toBeDefined()
  })
  test('the formulas whose inputs must be kept apart are formulas', () => expect(Object.keys(TOGETHER).filter(id => !byId.has(id))).toEqual([]))
})

afterAll(() => {
  const rows = formulas.flatMap(f => {
    const own = counted.filter(c => c.formula === f.id)
    const groups = new Map<string, number>()
    for (const c of own) { const key = `${c.obtained}|${c.source}`; groups.set(key, (groups.get(key) ?? 0) + 1) }
    return [...groups].map(([key, n]) => [f.id, ...key.split('|'), String(n)])
  })
  const of = (how: Case['obtained']): number => formulas.filter(f => counted.some(c => c.formula === f.id && c.obtained === how)).length
  console.log([
    'formula               how obtained               cases  source',
    ...rows.map(([id, how, source, n]) => `${id!.padEnd(22)}${how!.padEnd(27)}${n!.padStart(5)}  ${source!.slice(0, 110)}`),
    `${formulas.length} formulas, ${cases.length} cases, ${counted.length} counted (five at most of one table). Formulas with a published case: ${formulas.filter(f => counted.some(c => c.formula === f.id && published(c))).length}; `
      + `by how obtained: ${obtained.map(o => `${o} ${of(o)}`).join(', ')}.`,
  ].join('\n'))
})
