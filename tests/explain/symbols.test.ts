// What a formula prints in symbols is what it does: an evaluator that knows nothing of the program reads the symbols.
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chartFormulas } from '../../src/books/chart.ts'
import { given, total, type Formula } from '../../src/units/quantity.ts'
import type { Case } from '../handbook/case.ts'
import { evaluated, namesIn, OF_LINES } from './engine.ts'

const isFormula = (v: unknown): v is Formula => typeof v === 'object' && v !== null && 'says' in v && 'fn' in v && 'args' in v
const modules = async (folder: string): Promise<Record<string, unknown>[]> =>
  Promise.all(readdirSync(join(import.meta.dirname, folder)).filter(f => f.endsWith('.ts')).sort().map(f => import(join(import.meta.dirname, folder, f)) as Promise<Record<string, unknown>>))
const summed = total('each', [given(1, 'each', '')]).from
const formulas: Formula[] = [...(await modules('../../src/calc')).flatMap(m => Object.values(m).filter(isFormula)), ...Object.values(chartFormulas), ...(summed.is === 'worked' ? [summed.by] : [])]
const cases = (await modules('../handbook/cases')).flatMap(m => m.default as Case[])
const ofLines = (f: Formula): boolean => Object.keys(f.args as object).length === 0

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))

describe.each(formulas.map(f => [f.id, f] as const))('%s', (id, f) => {
  test('its symbols take its arguments, and each of them', () => {
    if (ofLines(f)) expect([...OF_LINES]).toContain(f.symbols)
    else expect([...namesIn(f.symbols)].sort()).toEqual(Object.keys(f.args as object).sort())
  })
  test('they give what each case of the handbook gives', () => {
    const own = cases.filter(c => c.formula === id)
    expect(own.length).toBeGreaterThan(0)
    for (const c of own) expect(near(evaluated(f.symbols, c.inputs), f.fn(c.inputs)), `${c.id}: ${evaluated(f.symbols, c.inputs)}, and the formula ${f.fn(c.inputs)}`).toBe(true)
  })
  test('and anywhere else in its range', () => {
    const one = (min: number, max: number) => {
      const near = fc.double({ min, max: Math.min(max, min + 50), noNaN: true, noDefaultInfinity: true }).map(x => Number(x.toFixed(4))).filter(x => x >= min && x <= max), first = Math.ceil(min), last = Math.min(Math.floor(max), first + 400)
      return first <= last ? fc.oneof(near, fc.integer({ min: first, max: last })) : near
    }
    const inputs: fc.Arbitrary<Record<string, number>> = ofLines(f) ? fc.array(one(0, 100), { minLength: 1, maxLength: 6 }).map(v => Object.fromEntries(v.map((x, i) => [String(i), x])))
      : fc.record(Object.fromEntries(Object.entries(f.args as Record<string, readonly [string, number, number]>).map(([name, [, min, max]]) => [name, one(min, max)])))
    fc.assert(fc.property(inputs, x => {
      const made = f.fn(x)
      return !Number.isFinite(made) || near(evaluated(f.symbols, x), made)
    }), { seed: 8, numRuns: 40 })
  })
})
