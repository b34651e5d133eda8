// Formulas: one name each, words, a source, arguments with a unit and a range, and each argument used by name.
import { describe, expect, test } from 'vitest'
import { chartFormulas } from '../../src/books/chart.ts'
import { OutOfRange, work, type Formula, type Quantity } from '../../src/units/quantity.ts'
import { filesIn, sources, text } from './source.ts'

const isFormula = (v: unknown): v is Formula => typeof v === 'object' && v !== null && 'says' in v && 'args' in v && 'fn' in v
const modules = await Promise.all(filesIn('src/calc', /\.ts$/).map(async file => await import(/* @vite-ignore */ `../../${file}`) as Record<string, unknown>))
const formulas: readonly Formula[] = [...modules, chartFormulas].flatMap(m => Object.values(m as Record<string, unknown>)).filter(isFormula)
/** Takes any number of lines: its arguments are the probes of the file. */
const OF_LINES = ['mean', 'standard-deviation', 'joined']

test('every formula of the source is looked at here, and formulas stand in calc and beside the chart', () => {
  const written = sources.flatMap(f => f === 'src/units/quantity.ts' ? [] : [...text(f).matchAll(/\b(?:f|listF)ormula\(\{\s*id: '([^']+)'/g)].map(m => ({ f, id: m[1]! })))
  expect(written.map(w => w.id).sort()).toEqual(formulas.map(x => x.id).sort())
  for (const { f, id } of written) expect([...filesIn('src/calc', /\.ts$/), 'src/books/chart.ts'], id).toContain(f)
})

test('no two have one name', () => expect(new Set(formulas.map(x => x.id)).size).toBe(formulas.length))

describe.each(formulas.map(x => [x.id, x] as const))('%s', (id, x) => {
  test('has words, a source, units and ranges, and uses what it takes', () => {
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    expect(x.says.length).toBeGreaterThan(5)
    expect(x.source.length).toBeGreaterThan(4)
    expect(x.gives.length).toBeGreaterThan(0)
    const args = Object.entries(x.args as Record<string, readonly [string, number, number]>)
    if (!OF_LINES.includes(id)) expect(args.length).toBeGreaterThan(0)
    for (const [name, [unit, min, max]] of args) {
      expect(unit.length, name).toBeGreaterThan(0)
      expect(Number.isFinite(min) && Number.isFinite(max), `${name} from ${min} to ${max}`).toBe(true)
      expect(min, name).toBeLessThan(max)
      expect(String(x.fn), `${name} stands in no line of it`).toMatch(new RegExp(`\\bx\\.${name}\\b`))
    }
    for (const [, used] of String(x.fn).matchAll(/\bx\.([A-Za-z]\w*)/g)) if (!OF_LINES.includes(id)) expect(Object.keys(x.args), `${used!} is no argument`).toContain(used)
  })

  test('refuses what is outside its range or no number', () => {
    const args = Object.entries(x.args as Record<string, readonly [string, number, number]>)
    const inputs = (change: Record<string, number>) => Object.fromEntries(args.map(([name, [unit, min, max]]) => [name, { value: change[name] ?? Math.min(max, Math.max(min, 1)), unit, from: { is: 'given', at: '' } }])) as Record<string, Quantity>
    for (const [name, [, min, max]] of args) for (const bad of [NaN, min - Math.abs(min) - 1, max + Math.abs(max) + 1]) {
      expect(() => work(x, inputs({ [name]: bad })), `${name} ${bad}`).toThrow(OutOfRange)
    }
  })
})
